package io.github.weirwise.reading;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
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
    private static final Limit TEXT = Limit.of("text", 0, 2000, Unit.COUNT, "reading.try.splitItInTwo");

    /**
     * @throws IllegalArgumentException if the text is longer than 2000 characters
     */
    public Note {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(text, "text");
        TEXT.check(text.length());
    }
}
