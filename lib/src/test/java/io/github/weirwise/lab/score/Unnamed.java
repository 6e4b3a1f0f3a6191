package io.github.weirwise.lab.score;

import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A journal without names, to be sent to others: readers become letters, the unit loses its name, notes and the words of advice stay
 * at home, and the first day becomes the first of January 2000 (times of the day stay).
 */
final class Unnamed {
    private static final Instant FIRST_DAY = Instant.parse("2000-01-01T00:00:00Z");

    private final Map<String, String> readers = new LinkedHashMap<>();
    private final Duration shift;

    private Unnamed(Journal journal) {
        Instant first = journal.entries().isEmpty()
                ? FIRST_DAY
                : journal.entries().get(0).at().truncatedTo(ChronoUnit.DAYS);
        shift = Duration.between(first, FIRST_DAY);
    }

    static Journal of(Journal journal) {
        Unnamed unnamed = new Unnamed(journal);
        List<JournalEntry> kept = new ArrayList<>();
        for (JournalEntry entry : journal.entries()) {
            if (!(entry instanceof Note) && !(entry instanceof AdviceGiven)) {
                kept.add(unnamed.entry(entry));
            }
        }
        return new Journal(kept);
    }

    static SkimmerUnit of(SkimmerUnit unit) {
        return new SkimmerUnit(
                "a unit",
                unit.columns(),
                unit.column(),
                unit.weir(),
                unit.cupMl(),
                unit.cupDrainLitresPerHour(),
                unit.ratedFlowLitresPerHour(),
                unit.ratedAirLitresPerHour(),
                unit.traits(),
                unit.target(),
                unit.layout());
    }

    private JournalEntry entry(JournalEntry entry) {
        Instant at = entry.at().plus(shift);
        if (entry instanceof Reading reading) {
            return new Reading(at, letter(reading.by()), reading.observations());
        }
        if (entry instanceof WeirMove move) {
            return new WeirMove(at, move.toCrestMm(), move.probe());
        }
        if (entry instanceof Service service) {
            return new Service(at, service.part());
        }
        if (entry instanceof Happening happening) {
            return new Happening(at, happening.kind());
        }
        if (entry instanceof SettingChange change) {
            return new SettingChange(at, change.what(), change.litresPerHour());
        }
        throw new IllegalStateException(entry.getClass().getSimpleName() + " must be taught to lose its names");
    }

    private String letter(String by) {
        return by.isEmpty() ? "" : readers.computeIfAbsent(by, name -> "reader " + (readers.size() + 1));
    }
}
