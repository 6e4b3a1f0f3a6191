package io.github.weirwise.reading;

import java.time.Instant;
import java.util.Objects;

/**
 * Something happened to the tank that the foam may feel.
 *
 * @param at when
 * @param kind what
 * @since 0.1
 */
public record Happening(Instant at, Kind kind) implements JournalEntry {
    /** What can happen. */
    public enum Kind {
        /** The unit was started for the first time, or new after a long stop. */
        FIRST_START,
        /** Normal feeding. */
        FED,
        /** Much or fatty food. */
        FED_HEAVILY,
        /** Hands, oil or cream in the tank. */
        HANDS_IN_TANK,
        /** A water conditioner or other additive. */
        CONDITIONER,
        /** Fresh sealant or glue. */
        SEALANT,
        /** A medicine. */
        MEDICATION,
        /** Part of the water was changed. */
        WATER_CHANGE,
        /** Fresh water or brine was added by hand. */
        TOP_OFF,
        /** An animal died. */
        ANIMAL_DIED,
        /** A pump was stopped. */
        PUMP_STOPPED,
        /** Pumps were started again. */
        PUMP_RESTARTED,
        /** The cup was emptied without washing. */
        CUP_EMPTIED,
        /** Water ran into the cup or over it. */
        FLOOD
    }

    /** Rejects nulls. */
    public Happening {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(kind, "kind");
    }
}
