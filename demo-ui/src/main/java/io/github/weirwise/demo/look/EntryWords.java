package io.github.weirwise.demo.look;

import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.List;

/** What was seen and done, as phrases; things seen, parts and happenings in the library's own words. */
public final class EntryWords {
    private EntryWords() {}

    /** One journal line. */
    public static Phrase of(JournalEntry entry) {
        if (entry instanceof Reading reading) {
            return reading.observations().stream()
                    .map(ObservationWords::of)
                    .reduce((first, next) -> Words.phrase("entry.and", first, next))
                    .orElseGet(() -> Words.phrase("entry.nothing"));
        }
        if (entry instanceof WeirMove move) {
            return Words.phrase(
                    move.probe() ? "entry.probe" : "entry.weir", Quantity.of(move.toCrestMm(), Unit.MILLIMETRE));
        }
        if (entry instanceof SettingChange change) {
            return Words.phrase("entry.set." + change.what(), Quantity.of(change.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (entry instanceof Service service) {
            return Words.phrase("entry.service", part(service.part()));
        }
        if (entry instanceof Happening happening) {
            return happening(happening.kind());
        }
        if (entry instanceof AdviceGiven advice) {
            return Words.phrase("entry.advice." + advice.followed(), advice.step());
        }
        return note((Note) entry);
    }

    /** A note that marks a task of upkeep as done tells the task. */
    private static Phrase note(Note note) {
        List<TaskDone> done = TaskDone.in(Journal.of(note));
        if (done.isEmpty()) {
            return Words.phrase("entry.note", note.text());
        }
        CareTask task = done.get(0).task();
        return Words.phrase("entry.task", task.what());
    }

    /** A part of the unit. */
    public static Phrase part(Part part) {
        return Phrase.of("diagnosis.part." + part);
    }

    /** How a part was found. */
    public static Phrase finding(Finding finding) {
        return Phrase.of("diagnosis.finding." + finding);
    }

    /** How the foam looks. */
    public static Phrase foam(FoamLookWord look) {
        return Phrase.of("diagnosis.look." + look);
    }

    /** How dark the skimmate is. */
    public static Phrase darkness(double ptCo) {
        return darkness(DarknessWord.of(ptCo));
    }

    /** A darkness. */
    public static Phrase darkness(DarknessWord word) {
        return Phrase.of("diagnosis.darkness." + word);
    }

    /** What happened. */
    public static Phrase happening(Happening.Kind kind) {
        return Phrase.of("sheet.entry.happening." + kind);
    }
}
