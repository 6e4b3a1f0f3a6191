package io.github.weirwise.report;

/**
 * How much a warning should weigh, mildest first.
 *
 * @since 0.1
 */
public enum Severity {
    /** Worth knowing; the result stands. */
    NOTE,
    /** The result is less certain than usual. */
    CAUTION,
    /** Someone, an animal or the building could be hurt, or the result should not be used as it is. */
    DANGER
}
