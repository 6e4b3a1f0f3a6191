package io.github.weirwise.unit;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalStateException;

/**
 * Solves the inverse: which weir crest (mm) gives a wanted submergence or amount of skimmate, all else as it is. The law and its
 * sources are those of {@link SteadyLaw}; the root is found to 1e-6 mm.
 *
 * @since 0.1
 */
public final class WeirSetting {
    private static final double TOLERANCE_MM = 1e-6;
    private static final int MOST_STEPS = 100;

    private WeirSetting() {}

    /**
     * The crest, mm over the chamber floor, at which the column's level stands this far over the funnel base.
     *
     * @param submergenceMm wanted submergence, any number of mm; what no crest gives is answered with nothing, never throws
     * @return the crest, or empty when no crest within the weir's travel gives it
     */
    public static OptionalDouble crestForSubmergence(SkimmerUnit unit, Settings settings, double submergenceMm) {
        double wantedMm = unit.column().funnelBaseMm() + submergenceMm;
        return solve(unit, settings, point -> point.columnLevelM() * 1000 - wantedMm);
    }

    /**
     * The crest, mm over the chamber floor, at which the unit gives this much skimmate.
     *
     * @param skimmateMlPerDay wanted amount, above 0 mL/day
     * @return the crest, or empty when no crest within the weir's travel gives it
     * @throws IllegalArgumentException if the amount is not above 0
     */
    public static OptionalDouble crestForSkimmate(SkimmerUnit unit, Settings settings, double skimmateMlPerDay) {
        if (!(skimmateMlPerDay > 0)) {
            throw new IllegalArgumentException(
                    "skimmateMlPerDay is " + skimmateMlPerDay + ", must be above 0 mL/day; ask for a real amount");
        }
        return solve(unit, settings, point -> point.skimmateM3PerS() * 1e6 * 86400 - skimmateMlPerDay);
    }

    private static OptionalDouble solve(SkimmerUnit unit, Settings settings, ToDoubleFunction<SteadyPoint> over) {
        SteadyLaw law = new SteadyLaw(unit);
        SteadyInputs inputs = SteadyInputs.of(unit, settings);
        double slipMm = settings.condition().weirSlipMm();
        DoubleUnaryOperator excess =
                crestMm -> over.applyAsDouble(law.at(inputs.withCrestM(SteadyInputs.trueCrestM(crestMm, slipMm))));
        double low = unit.weir().lowestCrestMm();
        double high = unit.weir().highestCrestMm();
        double atLow = excess.applyAsDouble(low);
        double atHigh = excess.applyAsDouble(high);
        if (!(atLow <= 0 && atHigh >= 0)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(new BracketingNthOrderBrentSolver(TOLERANCE_MM, 5)
                    .solve(MOST_STEPS, excess::applyAsDouble, low, high));
        } catch (MathIllegalStateException steep) {
            // Where the amount jumps, as when water comes over the lip, only halving is sure to end.
            return OptionalDouble.of(
                    new BisectionSolver(TOLERANCE_MM).solve(MOST_STEPS, excess::applyAsDouble, low, high));
        }
    }
}
