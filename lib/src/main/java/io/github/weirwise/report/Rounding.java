package io.github.weirwise.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;

/** How finely a person is told a number: never finer than it is read on a tank, and without trailing zeros. */
enum Rounding {
    /** A ruler: half millimetres under ten, whole ones above. */
    HALVES(shown -> shown < 10 ? 0.5 : 1),
    /** Inches: hundredths, since a millimetre is four of them. */
    HUNDREDTHS(shown -> 0.01),
    /** Thermometers and salinity. */
    TENTHS(shown -> 0.1),
    /** Counts, percentages, seconds. */
    WHOLE(shown -> 1),
    /** Amounts and flows: tenths under ten, then whole, three digits from a thousand on. */
    AMOUNT(shown -> shown < 10 ? 0.1 : Math.max(1, digits(shown, 3))),
    /** Amounts in a unit so small that tenths of it mean nothing: whole, three digits from a thousand on. */
    SMALL_UNIT(shown -> Math.max(1, digits(shown, 3))),
    /** Ratios and concentrations: two digits, whole from ten on. */
    TWO_DIGITS(shown -> Math.min(1, digits(shown, 2))),
    /** A computed chance is not known better than to a twentieth. */
    FIVES(shown -> 5);

    /** Of the smallest numbers there are, two digits are a step of nothing. */
    private static final double LEAST_STEP = Double.MIN_NORMAL;

    private final DoubleUnaryOperator step;

    /** @param step the finest step for a number of this size (not negative, as shown) */
    Rounding(DoubleUnaryOperator step) {
        this.step = step;
    }

    private double step(double shown) {
        return step.applyAsDouble(shown);
    }

    /** The number as shown, rounded half away from zero. */
    BigDecimal round(double shown) {
        return to(shown, step(Math.abs(shown)));
    }

    /** Both ends to a step of about a tenth of the width, since neither is known better than that. */
    BigDecimal[] round(double low, double high) {
        double fine = step(Math.max(Math.abs(low), Math.abs(high)));
        double step = Math.max(fine, oneOrFive((high - low) / 8));
        return new BigDecimal[] {to(low, step), to(high, step)};
    }

    /** A number as it would be typed: so many digits at most. */
    static BigDecimal typed(double shown, int digits, RoundingMode mode) {
        // The noise of a conversion is no reason to round 10 up to 10.0001.
        BigDecimal clean = new BigDecimal(shown).round(new MathContext(12, RoundingMode.HALF_UP));
        return clean.round(new MathContext(digits, mode));
    }

    private static BigDecimal to(double shown, double step) {
        // By decimal text, so that 0.15 lies half way and not just below.
        BigDecimal unit = BigDecimal.valueOf(Math.max(step, LEAST_STEP));
        return BigDecimal.valueOf(shown).divide(unit, 0, RoundingMode.HALF_UP).multiply(unit);
    }

    /** The largest 1, 5, 10, 50 ... that is not above the number; its tenth, hundredth ... below 1. */
    private static double oneOrFive(double most) {
        if (most <= 0) {
            return 0;
        }
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        return 5 * power <= most ? 5 * power : power;
    }

    /** The step that leaves so many digits. */
    private static double digits(double shown, int digits) {
        return shown == 0 ? 1 : Math.pow(10, Math.floor(Math.log10(shown)) - (digits - 1));
    }
}
