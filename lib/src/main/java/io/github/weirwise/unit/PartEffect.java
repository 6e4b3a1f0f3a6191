package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Arrays;

/**
 * What a part does when it is as bad as it gets, as terms of the sums for level and amount; sizes are stated judgement.
 *
 * @param airLog natural logarithm of the share of air lost in the air line, which a meter there shows; 0 to 5
 * @param gasLog natural logarithm of the share of gas that never reaches the foam and that no meter shows; 0 to 5
 * @param flowLog natural logarithm of the share of flow lost; 0 to 5
 * @param levelMm change of the level in the column besides that by air and flow, -100 to 100 mm
 * @param amountLog change of the amount of skimmate besides that by level, air and gas, in natural logarithms, -10 to 10
 * @since 0.1
 */
public record PartEffect(double airLog, double gasLog, double flowLog, double levelMm, double amountLog) {
    private static final Limit AIR_LOG = Limit.of("airLog", 0, 5, Unit.PLAIN, "unit.try.giveLossesAsPositive");
    private static final Limit GAS_LOG = Limit.of("gasLog", 0, 5, Unit.PLAIN, "unit.try.giveLossesAsPositive");
    private static final Limit FLOW_LOG = Limit.of("flowLog", 0, 5, Unit.PLAIN, "unit.try.giveLossesAsPositive");
    private static final Limit LEVEL_MM =
            Limit.of("levelMm", -100, 100, Unit.MILLIMETRE, "unit.try.giveLossesAsPositive");
    private static final Limit AMOUNT_LOG = Limit.of("amountLog", -10, 10, Unit.PLAIN, "unit.try.giveLossesAsPositive");

    /** Changes nothing. */
    public static final PartEffect NONE = new PartEffect(0, 0, 0, 0, 0);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public PartEffect {
        AIR_LOG.check(airLog);
        GAS_LOG.check(gasLog);
        FLOW_LOG.check(flowLog);
        LEVEL_MM.check(levelMm);
        AMOUNT_LOG.check(amountLog);
    }

    /**
     * How much of the term by which this is first told, as a positive number: air, flow, level, gas, amount in this order; 0 when
     * it changes nothing.
     */
    public double main() {
        double[] terms = {airLog, flowLog, Math.abs(levelMm), gasLog, Math.abs(amountLog)};
        return Arrays.stream(terms).filter(term -> term > 0).findFirst().orElse(0);
    }

    /** Whether the level in the column moves with it, by itself, by the air or by the flow. */
    public boolean movesLevel() {
        return levelMm != 0 || airLog > 0 || flowLog > 0;
    }

    static PartEffect onAir(double log) {
        return new PartEffect(log, 0, 0, 0, 0);
    }

    static PartEffect onFlow(double log) {
        return new PartEffect(0, 0, log, 0, 0);
    }

    static PartEffect onLevel(double mm) {
        return new PartEffect(0, 0, 0, mm, 0);
    }

    static PartEffect onAmount(double log) {
        return new PartEffect(0, 0, 0, 0, log);
    }
}
