package io.github.weirwise.report;

import java.util.Objects;

/**
 * A number of things together with their name, so that one of them reads differently from several: "1 change",
 * "3 changes". The texts stand under {@code key.one} and {@code key.other}, each with the place {0} for the number.
 *
 * @param number how many, 0 or more
 * @param key text key without its last part, such as {@code "practice.count.changes"}
 * @since 0.2
 */
public record Count(int number, String key) {
    /**
     * @throws IllegalArgumentException if {@code number} is negative
     */
    public Count {
        Objects.requireNonNull(key, "key");
        if (number < 0) {
            throw new IllegalArgumentException("a count must not be negative, got " + number);
        }
    }

    /** Shorthand for the constructor. */
    public static Count of(int number, String key) {
        return new Count(number, key);
    }

    Phrase phrase() {
        return Phrase.of(key + (number == 1 ? ".one" : ".other"), number);
    }
}
