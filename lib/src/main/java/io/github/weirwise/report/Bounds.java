package io.github.weirwise.report;

import java.util.Objects;

/**
 * Two ends that a person must keep to, or twice one number, told as they would be typed and not rounded for reading. In
 * other units than their own they are told a little narrower, so that what is told is allowed.
 *
 * @param low lower end; may be infinite or NaN
 * @param high upper end; may be infinite or NaN
 * @param unit the (metric) unit of both
 * @since 0.2
 */
public record Bounds(double low, double high, Unit unit) {
    /** Rejects null. */
    public Bounds {
        Objects.requireNonNull(unit, "unit");
    }

    /** A single number. */
    public static Bounds of(double value, Unit unit) {
        return new Bounds(value, value, unit);
    }
}
