package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * How the amount of skimmate answers near the wanted point, stated instead of derived: the odds of the gas to reach the lip as
 * foam go as {@code levelFactorPerMm^level x air^airExponent x life^lifeExponent}, through the amount that is wanted.
 *
 * <p>No measurement of a tank skimmer's answer to level or air is known. Published laws for overflowing foams and froths have
 * exponents of air of 1 to 3 (Stevenson 2007; Neethling, Lee &amp; Cilliers 2003: overflow goes with the square of the gas at a
 * fixed share, recalled), and common practice is that such units need few adjustments; so the usual answer is gentle. It is an
 * assumption: {@code docs/reference/model.md} says what hangs on it. Exponents and factor are those of the amount, all else as it is, while little of the gas
 * gets over and nothing floods; odds instead of shares bend the answer towards all of the gas far above the wanted level.
 *
 * @param foaminess amount at the wanted level, rated air and reference water over the wanted amount, 0.001 to 1000; 1 until a
 *     journal tells
 * @param levelFactorPerMm factor on the amount for 1 mm more water in the column, 1.01 to 2; 1.05 to 1.35 is likely
 * @param airExponent d log amount / d log air at the same level, 0.5 to 25; 1.5 to 6 is likely with what air does to the level
 * @param lifeExponent d log amount / d log mean life of a bubble, 0.5 to 20; 1 to 8 is likely
 * @since 0.1
 */
public record LipAnswer(double foaminess, double levelFactorPerMm, double airExponent, double lifeExponent) {
    private static final String TRY = "unit.try.startFromLipanswerUsual";

    private static final Limit FOAMINESS = Limit.of("foaminess", 0.001, 1000, Unit.PLAIN, TRY);
    private static final Limit LEVEL_FACTOR_PER_MM = Limit.of("levelFactorPerMm", 1.01, 2, Unit.PLAIN, TRY);
    private static final Limit AIR_EXPONENT = Limit.of("airExponent", 0.5, 25, Unit.PLAIN, TRY);
    private static final Limit LIFE_EXPONENT = Limit.of("lifeExponent", 0.5, 20, Unit.PLAIN, TRY);

    /** The gentle answer that a unit is taken to have until its journal tells. */
    public static final LipAnswer USUAL = new LipAnswer(1, 1.15, 2, 4);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public LipAnswer {
        FOAMINESS.check(foaminess);
        LEVEL_FACTOR_PER_MM.check(levelFactorPerMm);
        AIR_EXPONENT.check(airExponent);
        LIFE_EXPONENT.check(lifeExponent);
    }

    /**
     * The same answer of a foam that gives more or less.
     *
     * @param factor on the amount, above 0; the foaminess stays within its limits, never throws
     */
    public LipAnswer timesFoaminess(double factor) {
        double limited = Math.max(0.001, Math.min(1000, foaminess * factor));
        return new LipAnswer(limited, levelFactorPerMm, airExponent, lifeExponent);
    }
}
