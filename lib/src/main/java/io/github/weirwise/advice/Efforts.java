package io.github.weirwise.advice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * What things are worth to a keeper, in days of a badly running skimmer. Stated judgement, meant to be edited.
 *
 * @param dayOut a day out of the wanted band
 * @param floodedDay a day on which water leaves cup and drain, instead of that
 * @param move one move of the weir
 * @param look one reading beyond the daily round
 * @param work factor on the efforts of services ({@link io.github.weirwise.unit.Work}), 0 to 10
 * @param fouledPartDay a day with a part fouled by more than half
 * @since 0.2
 */
public record Efforts(double dayOut, double floodedDay, double move, double look, double work, double fouledPartDay) {
    private static final Limit DAY_OUT = Limit.of("dayOut", 0.01, 100, Unit.DAY, "advice.try.startFromEffortsUsual");
    private static final Limit FLOODED_DAY =
            Limit.of("floodedDay", 0.01, 100, Unit.DAY, "advice.try.startFromEffortsUsual");
    private static final Limit MOVE = Limit.of("move", 0, 100, Unit.DAY, "advice.try.startFromEffortsUsual");
    private static final Limit LOOK = Limit.of("look", 0, 100, Unit.DAY, "advice.try.startFromEffortsUsual");
    private static final Limit WORK = Limit.of("work", 0, 10, Unit.PLAIN, "advice.try.startFromEffortsUsual");
    private static final Limit FOULED_PART_DAY =
            Limit.of("fouledPartDay", 0, 100, Unit.DAY, "advice.try.startFromEffortsUsual");

    /** 1 day out, 3 flooded, 0.1 a move or a look, services as their rows say, 0.1 a day and fouled part. */
    public static final Efforts USUAL = new Efforts(1, 3, 0.1, 0.1, 1, 0.1);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Efforts {
        DAY_OUT.check(dayOut);
        FLOODED_DAY.check(floodedDay);
        MOVE.check(move);
        LOOK.check(look);
        WORK.check(work);
        FOULED_PART_DAY.check(fouledPartDay);
    }
}
