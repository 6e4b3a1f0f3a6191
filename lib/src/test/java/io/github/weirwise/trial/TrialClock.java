package io.github.weirwise.trial;

import java.time.Duration;
import java.time.Instant;

/** Turns hours of the trial into instants and back. */
final class TrialClock {
    /** Hour 0: a Monday morning. */
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private TrialClock() {}

    static Instant at(double hour) {
        return START.plus(Duration.ofMinutes(Math.round(hour * 60)));
    }

    /** The first full hour not before an instant. */
    static int hourNotBefore(Instant instant) {
        return (int) Math.ceil(Duration.between(START, instant).toSeconds() / 3600.0 - 1e-9);
    }
}
