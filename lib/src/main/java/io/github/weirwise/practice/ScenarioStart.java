package io.github.weirwise.practice;

import io.github.weirwise.report.Require;
import io.github.weirwise.unit.Settings;
import java.util.List;
import java.util.Objects;

/**
 * How a scenario begins. Its clock counts hours from the Monday's midnight of the week in which the trainee comes in;
 * hours before that are negative.
 *
 * @param settings how the unit was set when the tank's history begins, as the log says; of the condition only the load is
 *     taken, faults are events
 * @param fresh whether the tank was filled that day instead of having run for long
 * @param arrivesAtHour when the trainee comes in, 0 to below 168 h
 * @param daysBefore how long the tank has run by then in the simulation, 0 to 60 days
 * @param readingHours hours at which a colleague took the usual round before, in order
 * @since 0.1
 */
public record ScenarioStart(
        Settings settings, boolean fresh, double arrivesAtHour, double daysBefore, List<Double> readingHours) {
    private static final int MOST_READINGS = 60;

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public ScenarioStart {
        Objects.requireNonNull(settings, "settings");
        Require.inRange("arrivesAtHour", arrivesAtHour, 0, 167.99, "h", "8 is Monday at eight, 32 Tuesday at eight");
        Require.inRange("daysBefore", daysBefore, 0, 60, "days", "give the days of history");
        Require.inRange("readingHours", readingHours.size(), 0, MOST_READINGS, "readings", "leave out the oldest");
        double earliest = arrivesAtHour - 24 * daysBefore;
        for (double hour : readingHours) {
            Require.inRange("readingHours", hour, earliest, arrivesAtHour, "h", "a reading lies within the history");
            earliest = hour;
        }
        readingHours = List.copyOf(readingHours);
    }

    /** Hour at which the history begins. */
    public double beginsAtHour() {
        return arrivesAtHour - 24 * daysBefore;
    }
}
