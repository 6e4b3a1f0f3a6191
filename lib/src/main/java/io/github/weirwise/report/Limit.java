package io.github.weirwise.report;

import java.util.Objects;

/**
 * The one place where the limits of a number stand, with its unit and with what to try when a number lies outside.
 * Checks, messages, forms and schemas read them here.
 *
 * @param name name of the number as its holder spells it
 * @param low least value allowed, in {@code unit}
 * @param high greatest value allowed
 * @param unit the (metric) unit
 * @param tryThis what to try instead, a short sentence
 * @since 0.2
 */
public record Limit(String name, double low, double high, Unit unit, Phrase tryThis) {
    /**
     * @throws IllegalArgumentException unless {@code low <= high}
     */
    public Limit {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(tryThis, "tryThis");
        if (!(low <= high)) {
            throw new IllegalArgumentException("the limits of " + name + " are " + low + " to " + high);
        }
    }

    /** A limit whose advice stands in the bundles under a key. */
    public static Limit of(String name, double low, double high, Unit unit, String tryKey) {
        return new Limit(name, low, high, unit, Phrase.of(tryKey));
    }

    /**
     * The value itself if it is finite and within the limits.
     *
     * @throws OutOfRangeException if it is not
     */
    public double check(double value) {
        return check(value, low, high);
    }

    /**
     * The value itself if it is finite and within narrower limits, which another number sets.
     *
     * @throws OutOfRangeException if it is not
     */
    public double check(double value, double from, double to) {
        if (!(value >= from && value <= to)) {
            throw new OutOfRangeException(this, value, from, to);
        }
        return value;
    }

    /** The same as {@link #check(double, double, double)} with only the lower end narrower. */
    public double checkFrom(double value, double from) {
        return check(value, from, high);
    }

    /** The same as {@link #check(double, double, double)} with only the upper end narrower. */
    public double checkTo(double value, double to) {
        return check(value, low, to);
    }

    /** Whether the value is finite and within the limits. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** The nearest value within the limits; NaN for NaN. */
    public double clamp(double value) {
        return Math.max(low, Math.min(high, value));
    }

    /** Both ends, as a form tells them. */
    public Bounds bounds() {
        return new Bounds(low, high, unit);
    }
}
