package io.github.weirwise.report;

/** Which family of units a person reads. Only printing depends on it; the library always holds metric values. */
public enum UnitSystem {
    METRIC,
    US_CUSTOMARY
}
