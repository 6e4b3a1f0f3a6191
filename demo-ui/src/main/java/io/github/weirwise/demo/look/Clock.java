package io.github.weirwise.demo.look;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.report.Moment;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PracticeTime;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * Tells instants: days of the week and dates for a real journal, numbered days for an invented tank, days of the week and
 * their number for practice.
 *
 * @param start the first instant
 * @param kind whose clock it is
 * @param wall where the clock of a real journal hangs
 * @param told when it is told
 */
public record Clock(Instant start, Kind kind, Optional<ZoneId> wall, Instant told) {
    /** Whose clock it is. */
    public enum Kind {
        REAL,
        INVENTED,
        PRACTICE
    }

    /** Rejects nulls. */
    public Clock {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(told, "told");
    }

    /** A real journal's clock. */
    public static Clock real(Instant start, ZoneId wall, Instant told) {
        return new Clock(start, Kind.REAL, Optional.of(wall), told);
    }

    /** An invented tank's clock; day 1 is the day of its first instant. */
    public static Clock invented(Instant start) {
        return new Clock(start, Kind.INVENTED, Optional.empty(), start);
    }

    /** The clock of a scenario. */
    public static Clock practice(Instant start) {
        return new Clock(start, Kind.PRACTICE, Optional.empty(), start);
    }

    /** Day and time. */
    public Phrase when(Instant at) {
        return switch (kind) {
            case REAL -> Words.phrase("when", new Moment(at, wall.orElse(ZoneOffset.UTC), told));
            case INVENTED -> Words.phrase("when", new PracticeTime(hours(at)));
            case PRACTICE -> SessionClock.words(SessionClock.hours(at));
        };
    }

    /** When to look again after an advice. */
    public Phrase waiting(Advice advice) {
        Phrase judge = when(advice.judgeAt());
        return advice.floodLookAt()
                .map(at -> Words.phrase("wait.flood", when(at), judge))
                .orElseGet(() -> Words.phrase("wait.judge", judge));
    }

    private double hours(Instant at) {
        Instant midnight =
                start.atZone(ZoneOffset.UTC).truncatedTo(ChronoUnit.DAYS).toInstant();
        return Duration.between(midnight, at).toMillis() / 3.6e6;
    }
}
