package io.github.weirwise.unit;

import io.github.weirwise.report.Phrase;

/**
 * How the foam arrives in the cup, driest first; the limits between the states are an agreed band ({@link Target#AMOUNT_BAND}),
 * not a law of nature.
 *
 * @since 0.1
 */
public enum FoamState {
    /** Foam breaks before it reaches the lip. */
    NO_FOAM,
    /** Less skimmate than wanted. */
    TOO_DRY,
    /** The wanted amount, within its band. */
    ON_TARGET,
    /** More skimmate than wanted, pale. */
    TOO_WET,
    /** Water runs into the cup. */
    FLOODING;

    /**
     * The state for an amount of skimmate; {@code flooded} wins.
     *
     * @param skimmateMlPerDay amount, 0 mL/day or more; any number, never throws
     */
    public static FoamState of(double skimmateMlPerDay, boolean flooded, Target target) {
        if (flooded) {
            return FLOODING;
        }
        double ratio = skimmateMlPerDay / target.skimmateMlPerDay();
        if (ratio < NO_FOAM_BELOW) {
            return NO_FOAM;
        }
        if (ratio < Target.AMOUNT_BAND.low()) {
            return TOO_DRY;
        }
        return ratio <= Target.AMOUNT_BAND.high() ? ON_TARGET : TOO_WET;
    }

    /** The state in words. */
    public Phrase words() {
        return Phrase.of("unit.foamState." + name());
    }

    /** Below this share of the wanted amount a cup stays practically empty. */
    private static final double NO_FOAM_BELOW = 0.02;
}
