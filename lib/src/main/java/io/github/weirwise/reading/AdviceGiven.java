package io.github.weirwise.reading;

import java.time.Instant;
import java.util.Objects;

/**
 * A plain record that advice was given, so that the next person can see whether it was followed. It holds words, not the
 * advice itself: the journal must stay readable when the adviser has changed.
 *
 * @param at when
 * @param step the step in words
 * @param followed whether it was followed, as far as the writer knows
 * @since 0.1
 */
public record AdviceGiven(Instant at, String step, Followed followed) implements JournalEntry {
    /** What became of it. */
    public enum Followed {
        /** Not known yet. */
        OPEN,
        /** Done as advised. */
        YES,
        /** Something else was done. */
        NO
    }

    /** Rejects nulls. */
    public AdviceGiven {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(followed, "followed");
    }
}
