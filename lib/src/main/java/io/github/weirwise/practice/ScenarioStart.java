package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
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
 */
public record ScenarioStart(
        Settings settings, boolean fresh, double arrivesAtHour, double daysBefore, List<Double> readingHours) {
    private static final Limit ARRIVES_AT_HOUR =
            Limit.of("arrivesAtHour", 0, 167.99, Unit.HOUR, "practice.try.8IsMondayAt");
    private static final Limit DAYS_BEFORE = Limit.of("daysBefore", 0, 60, Unit.DAY, "practice.try.giveTheDaysOf");
    private static final Limit READING_HOURS_COUNT =
            Limit.of("readingHours", 0, 60, Unit.COUNT, "practice.try.leaveOutTheOldest");
    private static final Limit READING_HOURS =
            Limit.of("readingHours", -1440, 167.99, Unit.HOUR, "practice.try.aReadingLiesWithin");

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public ScenarioStart {
        Objects.requireNonNull(settings, "settings");
        ARRIVES_AT_HOUR.check(arrivesAtHour);
        DAYS_BEFORE.check(daysBefore);
        READING_HOURS_COUNT.check(readingHours.size());
        double earliest = arrivesAtHour - 24 * daysBefore;
        for (double hour : readingHours) {
            READING_HOURS.check(hour, earliest, arrivesAtHour);
            earliest = hour;
        }
        readingHours = List.copyOf(readingHours);
    }

    /** Hour at which the history begins. */
    public double beginsAtHour() {
        return arrivesAtHour - 24 * daysBefore;
    }
}
