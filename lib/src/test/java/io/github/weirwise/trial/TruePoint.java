package io.github.weirwise.trial;

/**
 * The true steady state.
 *
 * @param headMm head over the true crest
 * @param outsideMm clear-water level over the funnel base
 * @param levelMm level in the column over the funnel base
 * @param airLitresPerHour air that enters the foam
 * @param share share of it that lives to the lip
 * @param fullness gas in the foam over gas in, in mean lives
 * @param logAmount natural logarithm of skimmate over the target's amount, held within -9 to 4.5
 * @param gasPerLiquid gas over liquid at the lip against the same on target
 * @param flooded water or undrained froth at the lip
 */
record TruePoint(
        double headMm,
        double outsideMm,
        double levelMm,
        double airLitresPerHour,
        double share,
        double fullness,
        double logAmount,
        double gasPerLiquid,
        boolean flooded) {}
