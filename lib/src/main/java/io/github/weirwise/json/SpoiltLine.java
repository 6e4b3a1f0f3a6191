package io.github.weirwise.json;

import java.util.Objects;

/**
 * A line of a journal file that cannot be read. It stays where it is; only a torn last line is moved aside, by the next
 * {@link JournalFile#append append}.
 *
 * @param number line number in the file, from 1
 * @param text what stands there, shortened, unreadable bytes replaced
 * @param torn whether it is a last line without its end, as a crash in the middle of writing leaves it
 * @param problem what is wrong with it
 * @since 0.1
 */
public record SpoiltLine(int number, String text, boolean torn, String problem) {
    /** Rejects nulls. */
    public SpoiltLine {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(problem, "problem");
    }
}
