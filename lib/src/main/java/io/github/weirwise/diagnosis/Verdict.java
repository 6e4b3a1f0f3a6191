package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.FoamState;

/**
 * What the journal says about the foam now.
 *
 * @since 0.1
 */
public enum Verdict {
    /** Foam breaks before it reaches the lip. */
    NO_FOAM,
    /** Less skimmate than wanted. */
    TOO_DRY,
    /** The wanted amount, within its band. */
    ON_TARGET,
    /** More skimmate than wanted, pale. */
    TOO_WET,
    /** Water runs into the cup. */
    FLOODING,
    /** No state is likely enough to be named. */
    CANNOT_TELL;

    /** The verdict that names a state. */
    public static Verdict of(FoamState state) {
        return valueOf(state.name());
    }
}
