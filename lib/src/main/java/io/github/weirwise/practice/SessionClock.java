package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * Turns hours of a scenario's clock into the instants of its journal; hour 0 is a Monday's midnight.
 */
public final class SessionClock {
    /** Hour 0: Monday, 2 March 2026, midnight UTC. */
    public static final Instant MONDAY = Instant.parse("2026-03-02T00:00:00Z");

    private static final long MINUTES_A_DAY = 1440;
    private static final List<String> DAYS = List.of(
            "practice.clock.monday",
            "practice.clock.tuesday",
            "practice.clock.wednesday",
            "practice.clock.thursday",
            "practice.clock.friday",
            "practice.clock.saturday",
            "practice.clock.sunday");

    private SessionClock() {}

    /** The instant of an hour, to the second. */
    public static Instant at(double hours) {
        return MONDAY.plusSeconds(Math.round(hours * 3600));
    }

    /** The hour of an instant. */
    public static double hours(Instant instant) {
        return Duration.between(MONDAY, instant).toMillis() / 3.6e6;
    }

    /** An hour as day of the week, time and number of the day, as a trainee reads it. */
    public static Phrase words(double hours) {
        long minutes = Math.round(hours * 60);
        long day = Math.floorDiv(minutes, MINUTES_A_DAY);
        long ofDay = Math.floorMod(minutes, MINUTES_A_DAY);
        return Phrase.of(
                DAYS.get(Math.floorMod(day, 7)),
                day + 1,
                String.format(Locale.ROOT, "%02d:%02d", ofDay / 60, ofDay % 60));
    }
}
