package io.github.weirwise.report;

/**
 * Guards for formulas and plain texts: the message names the value, the limit, the unit and what to try. What people
 * enter is guarded by a {@link Limit}, whose words can be translated and told in the reader's units.
 *
 * @since 0.1
 */
public final class Require {
    private Require() {}

    /**
     * The value itself if it is finite and within the limits.
     *
     * @param name name of the value as its holder spells it
     * @param value number to check
     * @param low least value allowed
     * @param high greatest value allowed
     * @param unit unit for the message; may be empty
     * @param tryThis what the caller should try instead, a short sentence
     * @throws OutOfRangeException if it is not
     */
    public static double inRange(String name, double value, double low, double high, String unit, String tryThis) {
        if (!(value >= low && value <= high)) {
            throw new OutOfRangeException(name, value, low, high, unit, tryThis);
        }
        return value;
    }

    /**
     * The text itself if it holds something besides white space.
     *
     * @throws IllegalArgumentException if it is null or blank
     */
    public static String text(String name, String value) {
        if (value == null || value.isBlank()) {
            throw new WrongValueException(name, Phrase.of("report.empty", name), Phrase.of("report.try.giveWords"));
        }
        return value;
    }
}
