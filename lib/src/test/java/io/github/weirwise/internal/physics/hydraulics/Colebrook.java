package io.github.weirwise.internal.physics.hydraulics;

/** Friction by the formula that {@link PipeFriction#churchill} stands in for. Arguments are not checked. */
public final class Colebrook {
    private Colebrook() {}

    /**
     * Darcy friction factor, without unit, by Colebrook 1939, Journal of the Institution of Civil Engineers 11:133: 1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re
     * sqrt f)), for turbulent flow, Re from 4000.
     *
     * @param reynolds Re, 2000 to 1e9
     * @param relativeRoughness roughness height over bore, 0 to 0.1
     */
    public static double friction(double reynolds, double relativeRoughness) {
        double x = 7;
        for (int step = 0; step < 60; step++) {
            double next = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 * x / reynolds);
            double move = next - x;
            x = next;
            if (Math.abs(move) < 1e-13 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }
}
