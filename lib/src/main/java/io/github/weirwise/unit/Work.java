package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * What it takes to put a part right; efforts are stated judgement of what a keeper pays.
 *
 * @param effortDays what the work is worth to a keeper, in days of a badly running skimmer; 0 when there is nothing to do, to 10
 * @param minutes how long it takes, 0.5 to 600 min; our own estimates
 * @param foamAwayHours how long the foam stays away or cannot be judged afterwards, 0 to 96 h
 * @since 0.1
 */
public record Work(double effortDays, double minutes, double foamAwayHours) {
    private static final Limit EFFORT_DAYS = Limit.of("effortDays", 0, 10, Unit.DAY, "unit.try.giveDaysOfA");
    private static final Limit MINUTES = Limit.of("minutes", 0.5, 600, Unit.MINUTE, "unit.try.giveMinutesOfWork");
    private static final Limit FOAM_AWAY_HOURS =
            Limit.of("foamAwayHours", 0, 96, Unit.HOUR, "unit.try.giveHoursUntilThe");

    /** Nothing can be done but to look after it. */
    public static final Work NONE = new Work(0, 5, 0);
    /** A few minutes. */
    public static final Work QUICK = new Work(0.2, 10, 4);
    /** Salt brought back over a day, a little at a time for the animals' sake. */
    public static final Work SALT = new Work(0.3, 45, 24);
    /** Half an hour with the pump on the bench. */
    public static final Work LONG = new Work(0.5, 30, 6);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Work {
        EFFORT_DAYS.check(effortDays);
        MINUTES.check(minutes);
        FOAM_AWAY_HOURS.check(foamAwayHours);
    }

    Work withFoamAwayHours(double hours) {
        return new Work(effortDays, minutes, hours);
    }
}
