package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;

/**
 * What is wanted from a unit: a steady moderate amount of strong, brown skimmate.
 *
 * @param submergenceMm water level in the column over the funnel base to start from, -50 to 300 mm; each unit
 *     has its own
 * @param skimmateMlPerDay wanted amount, above 0 to 20000 mL/day
 * @param darknessPtCo wanted darkness in platinum-cobalt units, 0 to 100000; the dark tea of common practice
 * @since 0.1
 */
public record Target(double submergenceMm, double skimmateMlPerDay, Range darknessPtCo) {
    private static final Limit SUBMERGENCE_MM =
            Limit.of("submergenceMm", -50, 300, Unit.MILLIMETRE, "unit.try.takeTheSubmergenceAnd");
    private static final Limit SKIMMATE_ML_PER_DAY =
            Limit.of("skimmateMlPerDay", 1e-3, 20000, Unit.MILLILITRE_PER_DAY, "unit.try.takeTheSubmergenceAnd");

    private static final Limit DARKNESS_PT_CO =
            Limit.of("darknessPtCo", 0, 100000, Unit.PLATINUM_COBALT, "unit.try.takeADarkTea");

    /** On target means within these multiples of the wanted amount (an agreed band, not a law of nature). */
    public static final Range AMOUNT_BAND = new Range(0.4, 2.4);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Target {
        SUBMERGENCE_MM.check(submergenceMm);
        SKIMMATE_ML_PER_DAY.check(skimmateMlPerDay);
        DARKNESS_PT_CO.check(darknessPtCo.low());
        DARKNESS_PT_CO.check(darknessPtCo.high());
    }

    /** Amounts that count as on target, mL/day. */
    public Range skimmateBandMlPerDay() {
        return new Range(AMOUNT_BAND.low() * skimmateMlPerDay, AMOUNT_BAND.high() * skimmateMlPerDay);
    }
}
