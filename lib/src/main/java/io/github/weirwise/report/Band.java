package io.github.weirwise.report;

import java.util.Objects;

/**
 * A range that was stated, not estimated: a target, a travel, a usual interval. Each end is told as that number alone would be,
 * so that all lines of an answer name the same two ends.
 *
 * @param range both ends, in {@code unit}
 * @param unit the (metric) unit of both ends
 * @since 0.2
 */
public record Band(Range range, Unit unit) {
    /** Rejects nulls. */
    public Band {
        Objects.requireNonNull(range, "range");
        Objects.requireNonNull(unit, "unit");
    }

    /** Shorthand for the constructor. */
    public static Band of(Range range, Unit unit) {
        return new Band(range, unit);
    }
}
