package io.github.weirwise.advice;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * How the adviser works and what it may ask for.
 *
 * @param clocks waiting times
 * @param looks readings that can be taken at this unit; the adviser asks for no other
 * @param efforts what things are worth to this keeper
 * @since 0.1
 */
public record AdviserOptions(Clocks clocks, Set<LookKind> looks, Efforts efforts) {
    /** Clocks of common practice, every reading but the creep of the foam, which few can take, usual efforts. */
    public static final AdviserOptions DEFAULT = new AdviserOptions(
            Clocks.COMMON_PRACTICE, EnumSet.complementOf(EnumSet.of(LookKind.FOAM_CREEP)), Efforts.USUAL);

    /** Copies the set; rejects nulls. */
    public AdviserOptions {
        Objects.requireNonNull(clocks, "clocks");
        looks = Set.copyOf(looks);
        Objects.requireNonNull(efforts, "efforts");
    }

    /** The same with other looks. */
    public AdviserOptions withLooks(Set<LookKind> others) {
        return new AdviserOptions(clocks, others, efforts);
    }

    /** The same with other efforts. */
    public AdviserOptions withEfforts(Efforts others) {
        return new AdviserOptions(clocks, looks, others);
    }
}
