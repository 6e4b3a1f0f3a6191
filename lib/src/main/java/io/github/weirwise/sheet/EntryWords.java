package io.github.weirwise.sheet;

import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.AdviceGiven;
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
import java.util.List;

/** Journal entries in words, one line each. */
final class EntryWords {
    private EntryWords() {}

    static Phrase of(JournalEntry entry) {
        if (entry instanceof WeirMove move) {
            Quantity crest = Quantity.of(move.toCrestMm(), Unit.MILLIMETRE);
            return move.probe() ? Phrase.of("sheet.entry.probe", crest) : Phrase.of("sheet.entry.weir", crest);
        }
        if (entry instanceof SettingChange change) {
            Quantity flow = Quantity.of(change.litresPerHour(), Unit.LITRE_PER_HOUR);
            return Phrase.of("sheet.entry.knob." + change.what(), flow);
        }
        if (entry instanceof Service service) {
            return services(List.of(service));
        }
        if (entry instanceof Happening happening) {
            return Phrase.of("sheet.entry.happening." + happening.kind());
        }
        if (entry instanceof AdviceGiven advice) {
            return Phrase.of(
                    "sheet.entry.advice", advice.step(), Phrase.of("sheet.entry.followed." + advice.followed()));
        }
        return entry instanceof Note note ? note(note) : reading((Reading) entry);
    }

    /** Services of one day in one line. */
    static Phrase services(List<Service> services) {
        List<Phrase> parts = services.stream()
                .map(service -> Phrase.of("diagnosis.part." + service.part()))
                .toList();
        return Phrase.of("sheet.entry.services", parts);
    }

    private static Phrase note(Note note) {
        List<TaskDone> done = TaskDone.in(Journal.of(note));
        if (done.isEmpty()) {
            return Phrase.of("sheet.entry.note", note.text());
        }
        CareTask task = done.get(0).task();
        return Phrase.of("sheet.entry.task", task.what());
    }

    private static Phrase reading(Reading reading) {
        List<Phrase> seen =
                reading.observations().stream().map(ObservationWords::of).toList();
        return Phrase.of("sheet.entry.reading", seen);
    }
}
