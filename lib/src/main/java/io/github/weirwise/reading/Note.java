package io.github.weirwise.reading;

import java.time.Instant;
import java.util.Objects;

/**
 * Free words.
 *
 * @param at when
 * @param text at most 2000 characters
 * @since 0.1
 */
public record Note(Instant at, String text) implements JournalEntry {
    private static final int LONGEST = 2000;

    /**
     * @throws IllegalArgumentException if the text is longer than 2000 characters
     */
    public Note {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(text, "text");
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "a note has " + text.length() + " characters, may have " + LONGEST + "; split it in two");
        }
    }
}
