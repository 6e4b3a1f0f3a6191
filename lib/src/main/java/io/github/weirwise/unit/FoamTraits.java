package io.github.weirwise.unit;

import io.github.weirwise.report.Require;
import java.util.Objects;
import java.util.Optional;

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
 * @param lipAnswer how the amount answers to level, air and life; empty for the law of lives by {@code meanLifeSeconds} and
 *     {@code lifeShape}, which is steeper than units are likely to be
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
        double columnFeedShare,
        Optional<LipAnswer> lipAnswer) {
    /** Rigid films, 0.8 mm fresh and 2.2 mm lip bubbles, foam borne by the walls, a gentle answer to level and air. */
    public static final FoamTraits USUAL =
            new FoamTraits(24, 1.2, 0.8, 2.2, 0.0033, 2, 2, 0.10, 0, 0, Optional.of(LipAnswer.USUAL));

    private static final String START = "start from FoamTraits.USUAL";

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
        Objects.requireNonNull(lipAnswer, "lipAnswer");
    }

    /**
     * The same traits with the amount's answer stated.
     *
     * @param answer how the amount answers to level, air and life
     */
    public FoamTraits withLipAnswer(LipAnswer answer) {
        return answering(Optional.of(answer));
    }

    /** The same traits with the amount by the law of lives alone, the steepest answer there is: near the wanted point 13 to 24 times as much per part of air. */
    public FoamTraits byLives() {
        return answering(Optional.empty());
    }

    /**
     * The same unit's foam where all of it lives longer or shorter, whichever law the amount follows.
     *
     * @param factor on the mean life, above 0; it stays within its limits, never throws
     */
    public FoamTraits livingLonger(double factor) {
        return withMeanLifeSeconds(Math.max(1, Math.min(600, factor * meanLifeSeconds)))
                .answering(lipAnswer.map(answer -> answer.timesFoaminess(Math.pow(factor, answer.lifeExponent()))));
    }

    private FoamTraits answering(Optional<LipAnswer> answer) {
        return new FoamTraits(
                meanLifeSeconds,
                lifeShape,
                freshBubbleMm,
                lipBubbleMm,
                filmMobility,
                drainageExponent,
                holdupExponent,
                meanFoamLiquidFraction,
                weightOnWater,
                columnFeedShare,
                answer);
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
                columnFeedShare,
                lipAnswer);
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
                columnFeedShare,
                lipAnswer);
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
                columnFeedShare,
                lipAnswer);
    }
}
