package io.github.weirwise.practice;

import java.time.Duration;
import java.time.Instant;

/** Turns hours of a scenario's clock into the instants of its journal; hour 0 is a Monday's midnight. */
public final class SessionClock {
    /** Hour 0: Monday, 2 March 2026, midnight UTC. */
    public static final Instant MONDAY = Instant.parse("2026-03-02T00:00:00Z");

    private SessionClock() {}

    /** The instant of an hour, to the second. */
    public static Instant at(double hours) {
        return MONDAY.plusSeconds(Math.round(hours * 3600));
    }

    /** The hour of an instant. */
    public static double hours(Instant instant) {
        return Duration.between(MONDAY, instant).toMillis() / 3.6e6;
    }
}
