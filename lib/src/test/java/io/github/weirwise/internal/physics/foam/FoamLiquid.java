package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * The liquid between the bubbles, as far as drainage asks.
 *
 * @param densityKgPerM3 500 to 2000 kg/m3
 * @param viscosityPaS dynamic viscosity, 1e-4 to 0.1 Pa s
 * @param surfaceTensionNPerM 0.005 to 0.2 N/m; organics in tank water take several to 20 mN/m from the 73 of clean sea water
 * @since 0.1
 */
public record FoamLiquid(double densityKgPerM3, double viscosityPaS, double surfaceTensionNPerM) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public FoamLiquid {
        Require.inRange("densityKgPerM3", densityKgPerM3, 500, 2000, "kg/m3", "water has about 1000");
        Require.inRange("viscosityPaS", viscosityPaS, 1e-4, 0.1, "Pa s", "water has about 0.001");
        Require.inRange("surfaceTensionNPerM", surfaceTensionNPerM, 0.005, 0.2, "N/m", "tank water has 0.05 to 0.07");
    }
}
