package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Require;

/**
 * Darcy friction factor (without unit) of a round pipe by Churchill 1977.
 *
 * <p>The Darcy factor is four times the Fanning factor: head loss = f (L/D) V^2/(2 g).
 */
public final class PipeFriction {
    private PipeFriction() {}

    /**
     * Darcy friction factor, without unit, by Churchill 1977, Chemical Engineering 84(24):91: one formula for laminar, transitional and turbulent flow. Within
     * 1 % of Colebrook from Re 1e4, 2 % above it at 4000; between 2000 and 4000 real flow jumps about and no formula
     * holds.
     *
     * @param reynolds Re, above 0 to 1e9
     * @param relativeRoughness roughness height over bore, 0 to 0.1
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double churchill(double reynolds, double relativeRoughness) {
        Require.inRange("reynolds", reynolds, 1e-6, 1e9, "", "give speed x bore / kinematic viscosity");
        Require.inRange(
                "relativeRoughness", relativeRoughness, 0, 0.1, "", "give roughness over bore, 0 for smooth plastic");
        double rough = Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness;
        double turbulent = power16(2.457 * Math.log(1 / rough));
        double transitional = power16(37530 / reynolds);
        double laminar = Math.pow(8 / reynolds, 12);
        return 8 * Math.pow(laminar + Math.pow(turbulent + transitional, -1.5), 1.0 / 12);
    }

    private static double power16(double x) {
        double two = x * x;
        double four = two * two;
        double eight = four * four;
        return eight * eight;
    }
}
