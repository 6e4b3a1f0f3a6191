package io.github.weirwise.demo.look;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.report.Phrase;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Tells instants as day and hour; day 1 is the day of the first instant.
 *
 * @param start the first instant
 */
public record Clock(Instant start) {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** A phrase of the demo with day number and hour as its values. */
    public Phrase when(Instant at, String name) {
        return Words.phrase(name, day(at), hour(at));
    }

    /** When to look again after an advice. */
    public Phrase waiting(Advice advice) {
        Phrase judge = when(advice.judgeAt(), "when");
        return advice.floodLookAt()
                .map(at -> Words.phrase("wait.flood", when(at, "when"), judge))
                .orElseGet(() -> Words.phrase("wait.judge", judge));
    }

    /** Number of the day, 1 for the first. */
    public int day(Instant at) {
        Instant midnight = start.atZone(ZoneOffset.UTC)
                .toLocalDate()
                .atStartOfDay(ZoneOffset.UTC)
                .toInstant();
        return 1 + Math.toIntExact(Duration.between(midnight, at).toDays());
    }

    /** Hours and minutes. */
    public String hour(Instant at) {
        return HOUR.format(at.atZone(ZoneOffset.UTC));
    }
}
