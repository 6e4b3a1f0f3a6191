package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.Adsorption;

/** The coverage that the strength of the skimmate assumes, for evidence that changes it. */
public final class AssumedCoverage {
    private AssumedCoverage() {}

    public static Adsorption adsorption() {
        return SkimmateStrength.ADSORPTION;
    }
}
