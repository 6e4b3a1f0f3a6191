package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Speed (m/s) at which a bubble gathers surface load in the seconds of its rise: transport to the surface (Froessling 1938;
 * Ranz &amp; Marshall 1952).
 *
 * <p>In tank water a bubble has seconds while the load needs tens of seconds to minutes, so {@link Adsorption#load} alone
 * is too much: no more than c k t comes to the surface. Sorption itself is taken as instant.
 */
public final class BubbleUptake {
    /** Diffusivity of a middling protein (66 kg/mol) in water, m2/s; from memory. */
    public static final double PROTEIN_DIFFUSIVITY = 6e-11;

    private BubbleUptake() {}

    /**
     * Speed k of transport to a rigid sphere, m/s: Sh = 2 + 0.6 Re^(1/2) Sc^(1/3) (Froessling 1938; Ranz &amp; Marshall
     * 1952), k = Sh D/d.
     *
     * @param riseSpeedMPerS 0 to 10 m/s
     * @param diameterM bubble diameter, 1e-6 to 0.05 m
     * @param kinematicViscosityM2PerS 1e-8 to 1e-3 m2/s
     * @param diffusivityM2PerS D of what is gathered, 1e-13 to 1e-8 m2/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double transferSpeed(
            double riseSpeedMPerS, double diameterM, double kinematicViscosityM2PerS, double diffusivityM2PerS) {
        Require.inRange("riseSpeedMPerS", riseSpeedMPerS, 0, 10, "m/s", "give the bubble's speed through the water");
        Require.inRange("diameterM", diameterM, 1e-6, 0.05, "m", "give the bubble's diameter in metres");
        Require.inRange("kinematicViscosityM2PerS", kinematicViscosityM2PerS, 1e-8, 1e-3, "m2/s", "water has 1e-6");
        Require.inRange("diffusivityM2PerS", diffusivityM2PerS, 1e-13, 1e-8, "m2/s", "proteins have about 6e-11");
        double reynolds = riseSpeedMPerS * diameterM / kinematicViscosityM2PerS;
        double schmidt = kinematicViscosityM2PerS / diffusivityM2PerS;
        double sherwood = 2 + 0.6 * Math.sqrt(reynolds) * Math.cbrt(schmidt);
        return sherwood * diffusivityM2PerS / diameterM;
    }
}
