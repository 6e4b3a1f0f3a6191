package io.github.weirwise.advice;

import io.github.weirwise.report.Require;

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
    /** 1 day out, 3 flooded, 0.1 a move or a look, services as their rows say, 0.1 a day and fouled part. */
    public static final Efforts USUAL = new Efforts(1, 3, 0.1, 0.1, 1, 0.1);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Efforts {
        String fix = "start from Efforts.USUAL";
        Require.inRange("dayOut", dayOut, 0.01, 100, "days", fix);
        Require.inRange("floodedDay", floodedDay, 0.01, 100, "days", fix);
        Require.inRange("move", move, 0, 100, "days", fix);
        Require.inRange("look", look, 0, 100, "days", fix);
        Require.inRange("work", work, 0, 10, "", fix);
        Require.inRange("fouledPartDay", fouledPartDay, 0, 100, "days", fix);
    }
}
