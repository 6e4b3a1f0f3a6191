package io.github.weirwise.diagnosis;

import io.github.weirwise.skimmer.FoamState;

/** What the journal says about the foam now. */
public enum Verdict {
    NO_FOAM,
    TOO_DRY,
    ON_TARGET,
    TOO_WET,
    FLOODING,
    /** No state is likely enough to be named. */
    CANNOT_TELL;

    /** The verdict that names a state. */
    public static Verdict of(FoamState state) {
        return valueOf(state.name());
    }
}
