package io.github.weirwise.report;

/**
 * A number lies outside the limits in which it has a meaning.
 *
 * @since 0.1
 */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final double value;
    private final double low;
    private final double high;

    OutOfRangeException(String name, double value, double low, double high, String unit, String tryThis) {
        super(name + " is " + value + ", must be " + low + " to " + high + (unit.isEmpty() ? "" : " " + unit) + "; "
                + tryThis);
        this.name = name;
        this.value = value;
        this.low = low;
        this.high = high;
    }

    /** Name of the value. */
    public String name() {
        return name;
    }

    /** The value given. */
    public double value() {
        return value;
    }

    /** The limits. */
    public Range limits() {
        return new Range(low, high);
    }
}
