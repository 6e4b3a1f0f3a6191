package io.github.weirwise.lab.truth;

/**
 * A unit at rest, as a truth has it.
 *
 * @param crestMm where the crest really stands, over the chamber floor
 * @param headMm head over the crest
 * @param beyondMm water level beyond the weir over its crest, negative below
 * @param outsideMm water level outside the column over the funnel base
 * @param levelMm water level in the column over the funnel base
 * @param airLitresPerHour air through the line
 * @param flowLitresPerHour flow of the return pump
 * @param salinity practical salinity
 * @param logAmount logarithm of skimmate over the wanted amount, -9 to 4.5
 * @param streaming whether water with bubbles streams over the lip
 * @param darknessPtCo darkness of the skimmate
 * @param collapseSeconds time until the foam stands half as high with the air off
 */
public record Response(
        double crestMm,
        double headMm,
        double beyondMm,
        double outsideMm,
        double levelMm,
        double airLitresPerHour,
        double flowLitresPerHour,
        double salinity,
        double logAmount,
        boolean streaming,
        double darknessPtCo,
        double collapseSeconds) {
    /** Less than this is no skimmate. */
    public static final double LEAST_LOG = -9;
    /** More than this is water. */
    public static final double MOST_LOG = 4.5;
}
