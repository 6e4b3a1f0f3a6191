package io.github.weirwise.report;

import java.util.Objects;

/**
 * A number with the unit in which it is held (always the metric one).
 *
 * @param value finite number
 * @param unit its unit
 * @since 0.1
 */
public record Quantity(double value, Unit unit) {
    /**
     * @throws IllegalArgumentException if {@code value} is not finite
     */
    public Quantity {
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity in " + unit + " must be finite, got " + value);
        }
    }

    /** Shorthand for the constructor, for use with a static import. */
    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit);
    }
}
