package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Surface load (kg/m2) of a surfactant on bubbles at equilibrium with its concentration in the water (kg/m3): Langmuir
 * 1918, Gamma = Gm K c/(1 + K c).
 *
 * <p>For bovine serum albumin Gm is 1.5-3 mg/m2 and half-saturation lies at 0.001-0.05 kg/m3 (both from memory; K varies
 * more than tenfold between papers): fit it.
 *
 * @param saturationKgPerM2 Gm, 1e-9 to 1e-3 kg/m2
 * @param affinityM3PerKg K, 1e-3 to 1e6 m3/kg; 1/K is the concentration of half load
 */
public record Adsorption(double saturationKgPerM2, double affinityM3PerKg) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public Adsorption {
        Require.inRange("saturationKgPerM2", saturationKgPerM2, 1e-9, 1e-3, "kg/m2", "proteins hold about 2e-6");
        Require.inRange("affinityM3PerKg", affinityM3PerKg, 1e-3, 1e6, "m3/kg", "proteins have about 20 to 1000");
    }

    /**
     * Load at equilibrium, kg/m2.
     *
     * @param concentrationKgPerM3 0 to 1000 kg/m3
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double load(double concentrationKgPerM3) {
        Require.inRange("concentrationKgPerM3", concentrationKgPerM3, 0, 1000, "kg/m3", "1 mg/L is 0.001 kg/m3");
        double strength = affinityM3PerKg * concentrationKgPerM3;
        return saturationKgPerM2 * strength / (1 + strength);
    }
}
