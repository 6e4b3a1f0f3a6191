package io.github.weirwise.report;

import java.util.List;
import java.util.Objects;

/**
 * One translatable piece of text: a key into the texts of a floor, and the typed values that go into it.
 *
 * <p>The part of the key before the first dot names the package that owns the text ({@code "unit.smallHead"} is found
 * in {@code io/github/weirwise/unit/texts.properties}). Values may be {@link Quantity}, {@link QuantityRange},
 * {@link Count}, {@link Moment}, {@link PracticeTime}, {@link java.time.LocalDate}, {@link Phrase}, a list of these,
 * {@link String} (told as it is) or {@link Number} (an {@code int} as it is, anything else like a plain ratio).
 *
 * @param key text key, {@code floor.name}
 * @param values what goes into {0}, {1} and so on
 * @since 0.1
 */
public record Phrase(String key, List<Object> values) {
    /**
     * @throws IllegalArgumentException if the key has no dot
     */
    public Phrase {
        Objects.requireNonNull(key, "key");
        if (key.indexOf('.') < 1) {
            throw new IllegalArgumentException("a text key is 'floor.name', got '" + key + "'");
        }
        values = List.copyOf(values);
    }

    /** A phrase with its values in order. */
    public static Phrase of(String key, Object... values) {
        return new Phrase(key, List.of(values));
    }
}
