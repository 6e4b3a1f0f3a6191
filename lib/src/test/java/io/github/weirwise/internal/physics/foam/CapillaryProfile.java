package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Liquid fraction of a foam at rest over its own water, drained to equilibrium: eps(z) = eps_c (1 + z/z0)^-2, z in m
 * above the water, z0 = gamma/(rho g L) sqrt(0.171/eps_c). Dry-foam capillary law, Weaire &amp; Hutzler 1999; derived.
 *
 * <p>Near the water, where the foam is wet, the dry law is only roughly right.
 *
 * @param surfaceTensionNPerM gamma, 0.005 to 0.2 N/m
 * @param densityKgPerM3 rho, 500 to 2000 kg/m3
 * @param bubbleRadiusM r, 1e-5 to 0.05 m; L = 0.718 r
 * @param wettestFraction eps_c where foam meets water, 0.05 to 0.5: 0.26 ordered, 0.36 random packing
 * @since 0.1
 */
public record CapillaryProfile(
        double surfaceTensionNPerM, double densityKgPerM3, double bubbleRadiusM, double wettestFraction) {
    private static final double GRAVITY = 9.80665;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public CapillaryProfile {
        Require.inRange("surfaceTensionNPerM", surfaceTensionNPerM, 0.005, 0.2, "N/m", "tank water has 0.05 to 0.07");
        Require.inRange("densityKgPerM3", densityKgPerM3, 500, 2000, "kg/m3", "water has about 1000");
        Require.inRange("bubbleRadiusM", bubbleRadiusM, 1e-5, 0.05, "m", "give the bubbles' radius in metres");
        Require.inRange("wettestFraction", wettestFraction, 0.05, 0.5, "", "use 0.36 for random packing");
    }

    /** The height z0 over which the foam dries, m. */
    public double scaleM() {
        double edge = PlateauBorder.EDGE_PER_RADIUS * bubbleRadiusM;
        double bond = densityKgPerM3 * GRAVITY * edge / surfaceTensionNPerM;
        return Math.sqrt(PlateauBorder.FRACTION / wettestFraction) / bond;
    }

    /**
     * Liquid fraction at a height above the water.
     *
     * @param heightM z, 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double liquidFraction(double heightM) {
        Require.inRange("heightM", heightM, 0, 100, "m", "give the height above the water in metres");
        double ratio = 1 + heightM / scaleM();
        return wettestFraction / (ratio * ratio);
    }

    /**
     * Liquid that the foam holds by capillarity up to a height, m3 per m2 of cross-section (times 1000: mm of water): the
     * integral of eps, eps_c z0 z/(z + z0).
     *
     * @param heightM 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double heldLiquid(double heightM) {
        Require.inRange("heightM", heightM, 0, 100, "m", "give the height above the water in metres");
        double scale = scaleM();
        return wettestFraction * scale * heightM / (heightM + scale);
    }
}
