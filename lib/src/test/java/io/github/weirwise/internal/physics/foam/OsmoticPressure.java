package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Osmotic pressure (Pa) of foam, the push with which squeezed bubbles take up liquid: Pi = (gamma/R32) k (phi_c -
 * phi)^2/sqrt(phi) (Hoehler et al. 2008, Langmuir 24:418; Maestro et al. 2013, Soft Matter 9:2531; k from memory).
 *
 * @since 0.1
 */
public enum OsmoticPressure {
    /** Bubbles of one size in order: k = 7.3, phi_c = 0.26. */
    ORDERED(7.3, 0.26),
    /** Bubbles without order: k = 3.2, phi_c = 0.36. */
    DISORDERED(3.2, 0.36);

    private final double strength;
    private final double wettestFraction;

    OsmoticPressure(double strength, double wettestFraction) {
        this.strength = strength;
        this.wettestFraction = wettestFraction;
    }

    double strength() {
        return strength;
    }

    /** Liquid fraction phi_c from which bubbles no longer touch. */
    public double wettestFraction() {
        return wettestFraction;
    }

    /**
     * Pi R32/gamma, without unit; 0 from {@link #wettestFraction} upward.
     *
     * @param liquidFraction phi, 1e-6 to 1; published for about 0.01 to phi_c
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double reduced(double liquidFraction) {
        Require.inRange("liquidFraction", liquidFraction, 1e-6, 1, "", "give the share of the foam that is liquid");
        double rest = Math.max(0, wettestFraction - liquidFraction);
        return strength * rest * rest / Math.sqrt(liquidFraction);
    }

    /**
     * Pi, Pa.
     *
     * @param liquidFraction phi, 1e-6 to 1
     * @param surfaceTensionNPerM gamma, 0.005 to 0.2 N/m
     * @param sauterRadiusM R32, 1e-5 to 0.05 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double pascal(double liquidFraction, double surfaceTensionNPerM, double sauterRadiusM) {
        Require.inRange("surfaceTensionNPerM", surfaceTensionNPerM, 0.005, 0.2, "N/m", "tank water has 0.05 to 0.07");
        Require.inRange("sauterRadiusM", sauterRadiusM, 1e-5, 0.05, "m", "give the bubbles' radius in metres");
        return reduced(liquidFraction) * surfaceTensionNPerM / sauterRadiusM;
    }
}
