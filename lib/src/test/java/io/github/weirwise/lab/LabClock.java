package io.github.weirwise.lab;

import java.time.Duration;
import java.time.Instant;

/** Turns hours of a play into instants and back. */
public final class LabClock {
    /** Hour 0: a Monday morning. */
    private static final Instant START = Instant.parse("2026-03-02T09:00:00Z");

    private LabClock() {}

    /** The instant of a full hour. */
    public static Instant at(int hour) {
        return START.plus(Duration.ofHours(hour));
    }

    /** The first full hour not before an instant. */
    public static int hourNotBefore(Instant instant) {
        return (int) Math.ceil(Duration.between(START, instant).toSeconds() / 3600.0 - 1e-9);
    }

    /** Days from hour 0 to an instant. */
    public static double day(Instant instant) {
        return Duration.between(START, instant).toSeconds() / 86400.0;
    }
}
