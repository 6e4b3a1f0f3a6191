package io.github.weirwise.demo.panel;

/**
 * Specific gravity, as hydrometers and many refractometers show it, for who types that instead of salinity. A straight line
 * through sea water of salinity 35 at 25 \u00b0C against fresh water of the same temperature, 1023.34 over 997.05 kg/m3 (UNESCO
 * EOS-80); within 0.4 of a salinity from 20 to 40.
 */
final class SpecificGravity {
    private static final double PER_UNIT = 35 / (1023.34 / 997.05 - 1);
    /** No sea tank is as fresh as a salinity of 1.06, and none as heavy as 1.06. */
    private static final double HIGHEST = 1.06;

    private SpecificGravity() {}

    /** The salinity behind what was typed: a number from 1 to 1.06 is a specific gravity. */
    static double salinity(double typed) {
        return typed >= 1 && typed < HIGHEST ? (typed - 1) * PER_UNIT : typed;
    }
}
