package io.github.weirwise.internal.physics.bubbles;

/**
 * What bubbly flow does otherwise than by the balance that the library uses ({@link GasHoldup#richardsonZaki}), and where that balance ends. Arguments
 * are not checked.
 */
public final class RivalHoldup {
    private static final double GRAVITY = 9.80665;
    private static final double AIR_DENSITY = 1.2;
    private static final int STEPS = 80;

    private RivalHoldup() {}

    /** Distribution parameter of churning flow (Zuber &amp; Findlay). */
    public static final double CHURN_DISTRIBUTION = 1.2;

    /**
     * Holdup with n = 2, for contaminated bubbles of about a millimetre.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param terminalSpeedMPerS U of a single bubble, 1e-6 to 10 m/s
     * @return the lower root, 0 to 1; NaN if there is none (flooded)
     */
    public static double wallis(double gasFluxMPerS, double liquidFluxMPerS, double terminalSpeedMPerS) {
        return GasHoldup.richardsonZaki(gasFluxMPerS, liquidFluxMPerS, terminalSpeedMPerS, 2);
    }

    /**
     * Greatest gas flux that still has a steady holdup, m/s: U/4 for n = 2 without liquid flux. Infinite when the liquid
     * flows upward (it carries any gas along), 0 when the liquid comes down faster than a single bubble rises.
     *
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param terminalSpeedMPerS U, 1e-6 to 10 m/s
     * @param exponent n, 1.01 to 10
     */
    public static double floodingGasFlux(double liquidFluxMPerS, double terminalSpeedMPerS, double exponent) {
        if (liquidFluxMPerS > 0) {
            return Double.POSITIVE_INFINITY;
        }
        return greatestGasFlux(-liquidFluxMPerS, terminalSpeedMPerS, exponent);
    }

    /**
     * Exponent n by Richardson &amp; Zaki 1954, Transactions IChemE 32:35, without the wall term (from memory): 4.65 for
     * Re under 0.2, 4.35 Re^-0.03 to 1, 4.45 Re^-0.1 to 500, 2.39 above. The steps between the branches are the
     * authors'.
     *
     * @param reynolds Reynolds number of a single bubble, 0 to 1e7
     */
    public static double richardsonZakiExponent(double reynolds) {
        if (reynolds < 0.2) {
            return 4.65;
        }
        if (reynolds < 1) {
            return 4.35 * Math.pow(reynolds, -0.03);
        }
        return reynolds < 500 ? 4.45 * Math.pow(reynolds, -0.1) : 2.39;
    }

    /**
     * Holdup of churning flow or large clean bubbles: Zuber &amp; Findlay 1965, jg/(C0 (jg + jl) + vgj), with C0 = 1.2.
     * For dirty bubbles of 0.5-1 mm it gives a half to an eighth of the drift flux above.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param driftSpeedMPerS vgj, 1e-6 to 10 m/s; see {@link #churnDriftSpeed}
     * @return 0 to 1; NaN where the liquid comes down faster than the gas can rise
     */
    public static double zuberFindlay(double gasFluxMPerS, double liquidFluxMPerS, double driftSpeedMPerS) {
        double speed = CHURN_DISTRIBUTION * (gasFluxMPerS + liquidFluxMPerS) + driftSpeedMPerS;
        return speed > gasFluxMPerS ? gasFluxMPerS / speed : Double.NaN;
    }

    /**
     * Drift speed of churning flow, m/s: Zuber &amp; Findlay 1965, 1.53 (sigma g (rho - rho air)/rho^2)^0.25.
     *
     * @param densityKgPerM3 500 to 2000 kg/m3
     * @param surfaceTensionNPerM 0.005 to 0.2 N/m
     */
    public static double churnDriftSpeed(double densityKgPerM3, double surfaceTensionNPerM) {
        double lift = surfaceTensionNPerM * GRAVITY * (densityKgPerM3 - AIR_DENSITY);
        return 1.53 * Math.pow(lift / (densityKgPerM3 * densityKgPerM3), 0.25);
    }

    /**
     * The greatest of U e (1 - e)^(n - 1) - down e/(1 - e) over e. Its slope vanishes where U (1 - e)^n (1 - n e) equals
     * the downward flux; that side is convex and falls, so Newton's method from e = 0 does not overshoot.
     */
    static double greatestGasFlux(double down, double speed, double n) {
        if (down >= speed) {
            return 0;
        }
        double e = down == 0 ? 1 / n : 0;
        for (int step = 0; step < STEPS && down > 0; step++) {
            double power = Math.pow(1 - e, n - 1);
            double excess = speed * power * (1 - e) * (1 - n * e) - down;
            double slope = -speed * n * power * (2 - (n + 1) * e);
            double move = excess / slope;
            e -= move;
            if (Math.abs(move) <= 1e-13) {
                break;
            }
        }
        return speed * e * Math.pow(1 - e, n - 1) - down * e / (1 - e);
    }
}
