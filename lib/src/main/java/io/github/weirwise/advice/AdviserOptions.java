package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.BeliefOptions;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * How the adviser works and what it may ask for.
 *
 * @param belief number of possibilities and seed
 * @param clocks waiting times
 * @param looks readings that can be taken at this unit; the adviser asks for no other
 * @since 0.1
 */
public record AdviserOptions(BeliefOptions belief, Clocks clocks, Set<LookKind> looks) {
    /** Default belief, common-practice clocks, every kind of reading. */
    public static final AdviserOptions DEFAULT =
            new AdviserOptions(BeliefOptions.DEFAULT, Clocks.COMMON_PRACTICE, EnumSet.allOf(LookKind.class));

    /** Copies the set; rejects nulls. */
    public AdviserOptions {
        Objects.requireNonNull(belief, "belief");
        Objects.requireNonNull(clocks, "clocks");
        looks = Set.copyOf(looks);
    }
}
