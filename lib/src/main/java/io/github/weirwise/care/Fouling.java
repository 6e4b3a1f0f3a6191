package io.github.weirwise.care;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Times;
import io.github.weirwise.report.Work;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What one unit's journal says about how fast a part fouls. Of each span between two services only that span's own readings
 * count.
 *
 * @param spans one entry a span that tells something, oldest first
 */
record Fouling(List<Span> spans) {
    /**
     * What one span tells.
     *
     * @param days from the service to the first sign of dirt, or to the last time the part was seen clean
     * @param fouled whether there was a sign
     */
    record Span(double days, boolean fouled) {}

    /** Skimmate this far below the span's best, with nothing else changed, counts as a sign of a dirty neck. */
    private static final double FADED_SHARE = 0.6;
    /** Readings this soon after a wash show the returning foam, not the clean neck. */
    private static final double SETTLING_DAYS = 1;
    /** This many steady readings must stand before a fade is believed. */
    private static final int READINGS_BEFORE_FADE = 2;

    /** Spans follow each other in time, as the entries do, so each entry is looked at in its own span alone. */
    static Fouling of(Journal journal, CareTask task) {
        List<Span> spans = new ArrayList<>();
        List<JournalEntry> entries = journal.entries();
        List<Instant> services = task.part().isPresent() ? TaskDone.times(journal, task) : List.of();
        int next = 0;
        for (int i = 0; i < services.size(); i++) {
            Work.step();
            Instant from = services.get(i);
            Instant to = i + 1 < services.size() ? services.get(i + 1) : Instant.MAX;
            while (next < entries.size() && !entries.get(next).at().isAfter(from)) {
                next++;
            }
            int first = next;
            while (next < entries.size() && entries.get(next).at().isBefore(to)) {
                next++;
            }
            span(entries.subList(first, next), task.part().orElseThrow(), from).ifPresent(spans::add);
        }
        return new Fouling(List.copyOf(spans));
    }

    private static Optional<Span> span(List<JournalEntry> span, Part part, Instant from) {
        OptionalDouble sign = firstSign(span, part, from);
        if (part == Part.NECK_AND_CUP && sign.isEmpty()) {
            sign = fade(span, from);
        }
        if (sign.isPresent()) {
            return Optional.of(new Span(sign.getAsDouble(), true));
        }
        OptionalDouble clean =
                inspections(span, part, from, List.of(Finding.GOOD)).max();
        return clean.isPresent() ? Optional.of(new Span(clean.getAsDouble(), false)) : Optional.empty();
    }

    private static OptionalDouble firstSign(List<JournalEntry> span, Part part, Instant from) {
        return inspections(span, part, from, List.of(Finding.DOUBTFUL, Finding.BAD))
                .min();
    }

    private static DoubleStream inspections(List<JournalEntry> span, Part part, Instant from, List<Finding> findings) {
        return span.stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .filter(reading -> reading.observations().stream()
                        .anyMatch(seen -> seen instanceof Observation.Inspection look
                                && look.part() == part
                                && findings.contains(look.finding())))
                .mapToDouble(reading -> days(from, reading.at()));
    }

    /** First reading whose skimmate has fallen far below the best before it, until somebody changes a setting. */
    private static OptionalDouble fade(List<JournalEntry> span, Instant from) {
        double best = 0;
        int before = 0;
        for (JournalEntry entry : span) {
            if (entry instanceof WeirMove || entry instanceof SettingChange) {
                return OptionalDouble.empty();
            }
            if (entry instanceof Reading reading && days(from, reading.at()) > SETTLING_DAYS) {
                OptionalDouble rate = steadyRate(reading);
                if (rate.isPresent()) {
                    if (before >= READINGS_BEFORE_FADE && rate.getAsDouble() < FADED_SHARE * best) {
                        return OptionalDouble.of(days(from, reading.at()));
                    }
                    best = Math.max(best, rate.getAsDouble());
                    before++;
                }
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble steadyRate(Reading reading) {
        return reading.find(Observation.CupVolume.class)
                .filter(cup -> !cup.full())
                .map(cup -> OptionalDouble.of(cup.mlPerDay()))
                .orElse(OptionalDouble.empty());
    }

    private static double days(Instant from, Instant to) {
        return Times.days(from, to);
    }
}
