package io.github.weirwise.unit;

import io.github.weirwise.report.Range;
import java.util.Optional;

/**
 * By how much the fast form's skimmate may differ from the full foam column's, as a factor of 1 or more, once both agree where
 * the unit gives its wanted amount: wanted level, rated air, clean foam.
 *
 * <p>The column answers more steeply: foam that stands longer is coarser and drains faster, and more gas carries more liquid
 * into the foam. So the doubt grows with the distance from the wanted amount, and where changes of level, air and life cancel
 * a share of each stays. The three slopes are an envelope of random points of the working box (command {@code column}
 * prints how many it covers), not a law.
 */
record ResponseDoubt(double factor) {
    /** From here on it is worth telling. */
    static final double TOLD_FROM = 1.15;

    private static final double PER_LOG_AMOUNT = 0.9;
    /** Over what the level alone does to the amount. */
    private static final double PER_LOG_LEVEL = 0.3;

    private static final double PER_LOG_AIR = 4.5;
    /** Beyond this the answer is only "hardly any" or "far too much". */
    private static final double GREATEST = 20;

    /** Answers that are likely where none is stated or learned ({@link LipAnswer}); judgement. */
    private static final Range LIKELY_LOG_PER_MM = new Range(Math.log(1.05), Math.log(1.35));

    private static final Range LIKELY_AIR_EXPONENT = new Range(1, 4.5);

    /** The doubt where some skimmate comes and nothing floods; none elsewhere. */
    static ResponseDoubt of(SkimmerUnit unit, SteadyInputs inputs, SteadyPoint point) {
        if (!(point.skimmateM3PerS() > 0) || point.lipFlooded() || point.columnFlooded()) {
            return new ResponseDoubt(1);
        }
        Optional<LipAnswer> stated = unit.traits().lipAnswer();
        if (stated.isPresent()) {
            return stated(unit, stated.get(), inputs, point);
        }
        double wanted = unit.target().skimmateMlPerDay() / (1e6 * 86400);
        double ratedAir = unit.ratedAirLitresPerHour() / 3.6e6;
        double doubt = PER_LOG_AMOUNT * Math.abs(Math.log(point.skimmateM3PerS() / wanted))
                + PER_LOG_LEVEL * levelPart(unit, inputs, point)
                + PER_LOG_AIR * Math.abs(Math.log(inputs.airM3PerS() / ratedAir));
        return new ResponseDoubt(Math.min(GREATEST, Math.exp(doubt)));
    }

    /** How far a unit with the steepest or flattest likely answer would be from the stated one here. */
    private static ResponseDoubt stated(SkimmerUnit unit, LipAnswer answer, SteadyInputs inputs, SteadyPoint point) {
        double wantedM = (unit.column().funnelBaseMm() + unit.target().submergenceMm()) / 1000;
        double level = 1000 * Math.abs(point.columnLevelM() - wantedM);
        double air = Math.abs(Math.log(inputs.airM3PerS() * 3.6e6 / unit.ratedAirLitresPerHour()));
        double doubt = level * farther(Math.log(answer.levelFactorPerMm()), LIKELY_LOG_PER_MM)
                + air * farther(answer.airExponent(), LIKELY_AIR_EXPONENT);
        return new ResponseDoubt(Math.min(GREATEST, Math.exp(doubt)));
    }

    private static double farther(double value, Range likely) {
        return Math.max(Math.abs(value - likely.low()), Math.abs(value - likely.high()));
    }

    /** Logarithm of what the level's distance from the wanted one does to the amount, all else as it is. */
    private static double levelPart(SkimmerUnit unit, SteadyInputs inputs, SteadyPoint point) {
        double wantedM = (unit.column().funnelBaseMm() + unit.target().submergenceMm()) / 1000;
        double gas = 1 - unit.traits().meanFoamLiquidFraction();
        double wantedFoamM3 = gas * new FoamSpace(unit.column()).volumeAboveM3(wantedM);
        double livableM3 = inputs.airM3PerS() / unit.columns() * inputs.meanLifeS();
        double left = livableM3 - point.foamGasM3();
        double leftAtWanted = Math.max(1e-3 * livableM3, livableM3 - wantedFoamM3);
        double power = 2 * inputs.lifeShape() / (inputs.lifeShape() - 1);
        return power * Math.abs(Math.log(left / leftAtWanted));
    }
}
