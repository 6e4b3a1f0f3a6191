package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Require;

/**
 * Terminal rise speed (m/s) of a single air bubble in still tank water, by the drag law of Schiller &amp; Naumann 1935; rivals live in
 * the test tree.
 *
 * <p>Diameters are those of the sphere of equal volume, m; air is taken as 1.2 kg/m3. In tank water
 * surfactants stop the surface and the bubble drags like a solid sphere; at 1 mm a clean bubble rises 2.5 times as fast.
 */
public final class TerminalSpeed {

    private static final double GRAVITY = 9.80665;
    private static final double AIR_DENSITY = 1.2;

    private TerminalSpeed() {}

    /**
     * Speed of a fully contaminated bubble, m/s: the rigid sphere of Schiller &amp; Naumann 1935, CD = 24/Re (1 + 0.15
     * Re^0.687). Published for Reynolds numbers to 1000; about 5 % there. In sea water of 25 degrees that reaches
     * to 3.5 mm, but from about 2 mm bubbles flatten and Tomiyama et al. 1998 is nearer.
     *
     * @param diameterM 1e-6 to 0.05 m
     * @param densityKgPerM3 density of the liquid, 500 to 2000 kg/m3
     * @param viscosityPaS dynamic viscosity of the liquid, 1e-4 to 0.1 Pa s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double contaminated(double diameterM, double densityKgPerM3, double viscosityPaS) {
        Require.inRange(
                "diameterM", diameterM, 1e-6, 0.05, "m", "give the bubble's diameter in metres, 0.0008 for 0.8 mm");
        Require.inRange("densityKgPerM3", densityKgPerM3, 500, 2000, "kg/m3", "water has about 1000");
        Require.inRange("viscosityPaS", viscosityPaS, 1e-4, 0.1, "Pa s", "water has about 0.001");
        double cube = diameterM * diameterM * diameterM;
        double best = 4
                * densityKgPerM3
                * (densityKgPerM3 - AIR_DENSITY)
                * GRAVITY
                * cube
                / (3 * viscosityPaS * viscosityPaS);
        return SphereDrag.reynolds(best, 24) * viscosityPaS / (densityKgPerM3 * diameterM);
    }
}
