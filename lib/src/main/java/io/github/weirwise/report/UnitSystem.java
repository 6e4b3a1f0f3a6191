package io.github.weirwise.report;

/**
 * Which family of units a person reads. Only printing depends on it; the library always holds metric values.
 *
 * @since 0.1
 */
public enum UnitSystem {
    /** Millimetres, litres, degrees Celsius. */
    METRIC,
    /** Inches, US gallons, degrees Fahrenheit. */
    US_CUSTOMARY
}
