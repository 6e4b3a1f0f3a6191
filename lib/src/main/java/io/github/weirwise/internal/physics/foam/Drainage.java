package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Speed scale K (m/s) of drainage through foam: liquid runs down relative to the bubbles at the flux K eps^n, K = m rho g
 * r^2/mu (Stevenson 2006, J. Colloid Interface Sci. 305:1).
 *
 * <p>m depends on how freely the film surfaces move. Both constants are for n = 2 and come without a measurement in tank
 * foam: {@link #RIGID_FILMS} is derived from Plateau borders with surfaces at rest (Leonard &amp; Lemlich 1965; Koehler,
 * Hilgenfeldt &amp; Stone 2000), 0.016 is Stevenson's value for sodium dodecyl sulphate, from memory.
 * Protein films are near the rigid end.
 */
public final class Drainage {
    /** m for films whose surfaces do not move, as in protein foam. */
    public static final double RIGID_FILMS = 0.0033;
    /** n where the channels between the bubbles resist (both constants above). */
    public static final double CHANNEL_EXPONENT = 2;

    private static final double GRAVITY = 9.80665;

    private Drainage() {}

    /**
     * K, m/s.
     *
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     * @param bubbleRadiusM Sauter mean radius, 1e-5 to 0.05 m
     * @param m mobility constant, 1e-5 to 1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double speed(double densityKgPerM3, double viscosityPaS, double bubbleRadiusM, double m) {
        Require.inRange("densityKgPerM3", densityKgPerM3, 500, 2000, "kg/m3", "water has about 1000");
        Require.inRange("viscosityPaS", viscosityPaS, 1e-4, 0.1, "Pa s", "water has about 0.001");
        Require.inRange("bubbleRadiusM", bubbleRadiusM, 1e-5, 0.05, "m", "give a radius, 0.0011 for bubbles of 2.2 mm");
        Require.inRange("m", m, 1e-5, 1, "", "use 0.0033 for rigid films, 0.016 for mobile ones");
        return m * densityKgPerM3 * GRAVITY * bubbleRadiusM * bubbleRadiusM / viscosityPaS;
    }
}
