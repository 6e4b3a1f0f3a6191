package io.github.weirwise.reading;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One look at the unit. Any observation may be missing; an empty reading is allowed and says nothing.
 *
 * @param at when it was taken
 * @param by who took it, so that a person's own bias can be learned; may be empty
 * @param observations what was seen
 * @since 0.1
 */
public record Reading(Instant at, String by, List<Observation> observations) implements JournalEntry {
    /** Copies the list; rejects nulls. */
    public Reading {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(by, "by");
        observations = List.copyOf(observations);
    }

    /** A reading by nobody in particular. */
    public static Reading of(Instant at, Observation... observations) {
        return new Reading(at, "", List.of(observations));
    }

    /** The first observation of a kind, if there is one. */
    public <T extends Observation> Optional<T> find(Class<T> kind) {
        for (Observation each : observations) {
            if (kind.isInstance(each)) {
                return Optional.of(kind.cast(each));
            }
        }
        return Optional.empty();
    }
}
