package io.github.weirwise.reading;

import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.Objects;

/**
 * A part was cleaned, freed or put right.
 *
 * @param at when
 * @param part which
 * @since 0.1
 */
public record Service(Instant at, Part part) implements JournalEntry {
    /** Rejects nulls. */
    public Service {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(part, "part");
    }
}
