package io.github.weirwise.unit;

import io.github.weirwise.report.Require;

/**
 * What it takes to put a part right; efforts are stated judgement of what a keeper pays.
 *
 * @param effortDays what the work is worth to a keeper, in days of a badly running skimmer; 0 when there is nothing to do, to 10
 * @param minutes how long it takes, 0.5 to 600 min; our own estimates
 * @param foamAwayHours how long the foam stays away or cannot be judged afterwards, 0 to 96 h
 * @since 0.1
 */
public record Work(double effortDays, double minutes, double foamAwayHours) {
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
        Require.inRange("effortDays", effortDays, 0, 10, "days", "give days of a badly running skimmer");
        Require.inRange("minutes", minutes, 0.5, 600, "min", "give minutes of work");
        Require.inRange("foamAwayHours", foamAwayHours, 0, 96, "h", "give hours until the foam can be judged");
    }

    Work withFoamAwayHours(double hours) {
        return new Work(effortDays, minutes, hours);
    }
}
