package io.github.weirwise.unit;

import io.github.weirwise.report.Require;

/**
 * What foam and bubbles of one unit are like. None of it can be read off a drawing: the values are starting points that a
 * journal of readings corrects.
 *
 * @param meanLifeSeconds mean life of a bubble in the foam (Bikerman's foaminess) at the reference condition, 1 to 600 s;
 *     a fitted value of the unit
 * @param lifeShape exponent alpha of the law of lives S(t) = (1 + t/theta)^-alpha, above 1, to 10; assumed
 * @param freshBubbleMm diameter of the bubbles that the injector makes in sea water, 0.1 to 5 mm; from memory
 * @param lipBubbleMm diameter of the bubbles at the lip, 0.1 to 20 mm; assumed
 * @param filmMobility drainage constant m of Stevenson's law: 0.0033 for rigid (protein) films, derived from rigid
 *     Plateau borders; 0.016 for mobile films, from memory; 0.0005 to 0.05
 * @param drainageExponent exponent n of the drainage law, 1.5 (node-dominated) to 3; 2 for rigid films
 * @param holdupExponent exponent n of the drift flux U eps (1 - eps)^n, 1.5 to 5; 2 by Wallis
 * @param meanFoamLiquidFraction mean liquid fraction of the standing foam, 0 to 0.3; stands in for the profile
 * @param weightOnWater share of the foam's weight that rests on the water instead of on the walls, 0 to 1; uncertain
 * @param columnFeedShare share of the flow that passes down through the columns, 0 to 1
 * @since 0.1
 */
public record FoamTraits(
        double meanLifeSeconds,
        double lifeShape,
        double freshBubbleMm,
        double lipBubbleMm,
        double filmMobility,
        double drainageExponent,
        double holdupExponent,
        double meanFoamLiquidFraction,
        double weightOnWater,
        double columnFeedShare) {
    private static final String START = "start from FoamTraits.withMeanLife(24)";

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public FoamTraits {
        Require.inRange("meanLifeSeconds", meanLifeSeconds, 1, 600, "s", START);
        Require.inRange("lifeShape", lifeShape, 1.01, 10, "", START);
        Require.inRange("freshBubbleMm", freshBubbleMm, 0.1, 5, "mm", START);
        Require.inRange("lipBubbleMm", lipBubbleMm, 0.1, 20, "mm", START);
        Require.inRange("filmMobility", filmMobility, 0.0005, 0.05, "", START);
        Require.inRange("drainageExponent", drainageExponent, 1.5, 3, "", START);
        Require.inRange("holdupExponent", holdupExponent, 1.5, 5, "", START);
        Require.inRange("meanFoamLiquidFraction", meanFoamLiquidFraction, 0, 0.3, "", START);
        Require.inRange("weightOnWater", weightOnWater, 0, 1, "", START);
        Require.inRange("columnFeedShare", columnFeedShare, 0, 1, "", START);
    }

    /**
     * Rigid films, 0.8 mm fresh and 2.2 mm lip bubbles, a wide law of lives, foam borne by the walls.
     *
     * @param meanLifeSeconds 1 to 600 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static FoamTraits withMeanLife(double meanLifeSeconds) {
        return new FoamTraits(meanLifeSeconds, 1.2, 0.8, 2.2, 0.0033, 2, 2, 0.10, 0, 0);
    }

    /**
     * The same traits with another mean life.
     *
     * @param seconds 1 to 600 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamTraits withMeanLifeSeconds(double seconds) {
        return new FoamTraits(
                seconds,
                lifeShape,
                freshBubbleMm,
                lipBubbleMm,
                filmMobility,
                drainageExponent,
                holdupExponent,
                meanFoamLiquidFraction,
                weightOnWater,
                columnFeedShare);
    }

    /**
     * The same traits with another exponent of the law of lives.
     *
     * @param alpha 1.01 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamTraits withLifeShape(double alpha) {
        return new FoamTraits(
                meanLifeSeconds,
                alpha,
                freshBubbleMm,
                lipBubbleMm,
                filmMobility,
                drainageExponent,
                holdupExponent,
                meanFoamLiquidFraction,
                weightOnWater,
                columnFeedShare);
    }

    /**
     * The same traits with another share of the foam's weight on the water.
     *
     * @param share 0 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamTraits withWeightOnWater(double share) {
        return new FoamTraits(
                meanLifeSeconds,
                lifeShape,
                freshBubbleMm,
                lipBubbleMm,
                filmMobility,
                drainageExponent,
                holdupExponent,
                meanFoamLiquidFraction,
                share,
                columnFeedShare);
    }
}
