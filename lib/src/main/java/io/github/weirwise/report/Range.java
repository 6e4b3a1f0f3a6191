package io.github.weirwise.report;

/**
 * A closed interval of a number, in the unit of whoever holds it. Both ends are finite and {@code low <= high}.
 *
 * @param low lower end
 * @param high upper end
 * @since 0.1
 */
public record Range(double low, double high) {
    /**
     * @throws IllegalArgumentException if an end is not finite or {@code low > high}
     */
    public Range {
        if (!Double.isFinite(low) || !Double.isFinite(high) || low > high) {
            throw new WrongValueException(
                    "range",
                    Phrase.of("report.noRange", String.valueOf(low), String.valueOf(high)),
                    Phrase.of("report.try.swapEnds"));
        }
    }

    /** The interval {@code centre - halfWidth} to {@code centre + halfWidth}. */
    public static Range around(double centre, double halfWidth) {
        return new Range(centre - halfWidth, centre + halfWidth);
    }

    /** Whether {@code value} lies inside, ends included; false for NaN. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** {@code value} itself, or the nearer end when it lies outside. */
    public double clamp(double value) {
        return Math.max(low, Math.min(high, value));
    }

    /** Arithmetic middle. */
    public double middle() {
        return 0.5 * (low + high);
    }

    /** {@code high - low}. */
    public double width() {
        return high - low;
    }
}
