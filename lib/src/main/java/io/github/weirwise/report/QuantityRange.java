package io.github.weirwise.report;

import java.util.Objects;

/**
 * A range of numbers with their common unit.
 *
 * @param range both ends, in {@code unit}
 * @param unit the (metric) unit of both ends
 * @since 0.1
 */
public record QuantityRange(Range range, Unit unit) {
    /** Rejects nulls. */
    public QuantityRange {
        Objects.requireNonNull(range, "range");
        Objects.requireNonNull(unit, "unit");
    }

    /** Shorthand for the constructor. */
    public static QuantityRange of(Range range, Unit unit) {
        return new QuantityRange(range, unit);
    }
}
