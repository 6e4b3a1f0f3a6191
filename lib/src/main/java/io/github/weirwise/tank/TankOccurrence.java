package io.github.weirwise.tank;

import io.github.weirwise.report.Phrase;
import java.util.Objects;

/**
 * Something that the tank did by itself, found by event detection.
 *
 * @param atHours hour of the tank's clock
 * @param kind what
 */
public record TankOccurrence(double atHours, Kind kind) {
    /** Kinds of occurrence. */
    public enum Kind {
        /** The cup is full; from now on it spills back. */
        CUP_FULL,
        /** The container is full; the float shuts the air, or it spills on the floor. */
        CONTAINER_FULL,
        /** The top-off reservoir is empty. */
        RESERVOIR_EMPTY,
        /** The return pump begins to draw air. */
        SUMP_DRY,
        /** The sump begins to run over. */
        SUMP_OVERFLOW,
        /** The foam gives {@value TankOccurrence#FLOOD_MULTIPLE} times the wanted amount: the cup floods. */
        FLOOD,
        /** The film in the neck wants washing. */
        NECK_NEEDS_WASHING;

        /** The occurrence as a sentence. */
        public Phrase text() {
            return Phrase.of("tank.occurrence." + name());
        }
    }

    /** Amount, against the wanted one, that counts as a flood. */
    public static final double FLOOD_MULTIPLE = 10;

    /** Rejects nulls. */
    public TankOccurrence {
        Objects.requireNonNull(kind, "kind");
    }
}
