package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
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
    private static final String TRY = "unit.try.startFromFoamtraitsUsual";

    private static final Limit MEAN_LIFE_SECONDS = Limit.of("meanLifeSeconds", 1, 600, Unit.SECOND, TRY);
    private static final Limit LIFE_SHAPE = Limit.of("lifeShape", 1.01, 10, Unit.PLAIN, TRY);
    private static final Limit FRESH_BUBBLE_MM = Limit.of("freshBubbleMm", 0.1, 5, Unit.MILLIMETRE, TRY);
    private static final Limit LIP_BUBBLE_MM = Limit.of("lipBubbleMm", 0.1, 20, Unit.MILLIMETRE, TRY);
    private static final Limit FILM_MOBILITY = Limit.of("filmMobility", 0.0005, 0.05, Unit.PLAIN, TRY);
    private static final Limit DRAINAGE_EXPONENT = Limit.of("drainageExponent", 1.5, 3, Unit.PLAIN, TRY);
    private static final Limit HOLDUP_EXPONENT = Limit.of("holdupExponent", 1.5, 5, Unit.PLAIN, TRY);
    private static final Limit MEAN_FOAM_LIQUID_FRACTION = Limit.of("meanFoamLiquidFraction", 0, 0.3, Unit.PLAIN, TRY);
    private static final Limit WEIGHT_ON_WATER = Limit.of("weightOnWater", 0, 1, Unit.PLAIN, TRY);
    private static final Limit COLUMN_FEED_SHARE = Limit.of("columnFeedShare", 0, 1, Unit.PLAIN, TRY);

    /** Rigid films, 0.8 mm fresh and 2.2 mm lip bubbles, foam borne by the walls, a gentle answer to level and air. */
    public static final FoamTraits USUAL =
            new FoamTraits(24, 1.2, 0.8, 2.2, 0.0033, 2, 2, 0.10, 0, 0, Optional.of(LipAnswer.USUAL));

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public FoamTraits {
        MEAN_LIFE_SECONDS.check(meanLifeSeconds);
        LIFE_SHAPE.check(lifeShape);
        FRESH_BUBBLE_MM.check(freshBubbleMm);
        LIP_BUBBLE_MM.check(lipBubbleMm);
        FILM_MOBILITY.check(filmMobility);
        DRAINAGE_EXPONENT.check(drainageExponent);
        HOLDUP_EXPONENT.check(holdupExponent);
        MEAN_FOAM_LIQUID_FRACTION.check(meanFoamLiquidFraction);
        WEIGHT_ON_WATER.check(weightOnWater);
        COLUMN_FEED_SHARE.check(columnFeedShare);
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
        return copy(meanLifeSeconds, lifeShape, weightOnWater, answer);
    }

    private FoamTraits copy(double life, double shape, double onWater, Optional<LipAnswer> answer) {
        return new FoamTraits(
                life,
                shape,
                freshBubbleMm,
                lipBubbleMm,
                filmMobility,
                drainageExponent,
                holdupExponent,
                meanFoamLiquidFraction,
                onWater,
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
        return copy(seconds, lifeShape, weightOnWater, lipAnswer);
    }

    /**
     * The same traits with another exponent of the law of lives.
     *
     * @param alpha 1.01 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamTraits withLifeShape(double alpha) {
        return copy(meanLifeSeconds, alpha, weightOnWater, lipAnswer);
    }

    /**
     * The same traits with another share of the foam's weight on the water.
     *
     * @param share 0 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public FoamTraits withWeightOnWater(double share) {
        return copy(meanLifeSeconds, lifeShape, share, lipAnswer);
    }
}
