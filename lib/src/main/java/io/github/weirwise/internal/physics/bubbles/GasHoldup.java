package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Require;

/**
 * Gas holdup (share of the column's volume that is gas, 0 to 1) from the fluxes of gas and liquid (m/s), by the drift
 * flux of Wallis (1969) and Richardson &amp; Zaki (1954), with Zuber &amp; Findlay (1965) for comparison.
 *
 * <p>Fluxes are volume flows over the cross-section, positive upward; gas flux is never negative. The balance is jg (1 -
 * e) - jl e = U e (1 - e)^n. Its lower root is the bubbly column; when there is none, the column cannot pass the gas
 * steadily (it floods) and the answer is {@link Double#NaN}: ask {@link #floodingGasFlux} for the limit.
 *
 * @since 0.1
 */
public final class GasHoldup {
    /** Exponent for contaminated bubbles of about a millimetre (Wallis). */
    public static final double WALLIS_EXPONENT = 2;
    /** Distribution parameter of churning flow (Zuber &amp; Findlay). */
    public static final double CHURN_DISTRIBUTION = 1.2;

    private static final double GRAVITY = 9.80665;
    private static final double AIR_DENSITY = 1.2;

    private GasHoldup() {}

    /**
     * Holdup with n = 2, for contaminated bubbles of about a millimetre.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param terminalSpeedMPerS U of a single bubble, 1e-6 to 10 m/s
     * @return the lower root, 0 to 1; NaN if there is none (flooded)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double wallis(double gasFluxMPerS, double liquidFluxMPerS, double terminalSpeedMPerS) {
        return richardsonZaki(gasFluxMPerS, liquidFluxMPerS, terminalSpeedMPerS, WALLIS_EXPONENT);
    }

    /**
     * Holdup with any exponent.
     *
     * @param gasFluxMPerS jg, 0 to 10 m/s
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param terminalSpeedMPerS U of a single bubble, 1e-6 to 10 m/s
     * @param exponent n, 1.01 to 10; 2 (Wallis) to 4.65 (creeping flow)
     * @return the lower root, 0 to 1; NaN if there is none (flooded)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double richardsonZaki(
            double gasFluxMPerS, double liquidFluxMPerS, double terminalSpeedMPerS, double exponent) {
        requireGas(gasFluxMPerS);
        requireFlow(liquidFluxMPerS, terminalSpeedMPerS, exponent);
        if (gasFluxMPerS == 0) {
            return 0;
        }
        return new DriftFlux(gasFluxMPerS, liquidFluxMPerS, terminalSpeedMPerS, exponent).lowerRoot();
    }

    /**
     * Greatest gas flux that still has a steady holdup, m/s: U/4 for n = 2 without liquid flux. Infinite when the liquid
     * flows upward (it carries any gas along), 0 when the liquid comes down faster than a single bubble rises.
     *
     * @param liquidFluxMPerS jl, -10 to 10 m/s, positive upward
     * @param terminalSpeedMPerS U, 1e-6 to 10 m/s
     * @param exponent n, 1.01 to 10
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double floodingGasFlux(double liquidFluxMPerS, double terminalSpeedMPerS, double exponent) {
        requireFlow(liquidFluxMPerS, terminalSpeedMPerS, exponent);
        if (liquidFluxMPerS > 0) {
            return Double.POSITIVE_INFINITY;
        }
        return DriftFlux.greatestGasFlux(-liquidFluxMPerS, terminalSpeedMPerS, exponent);
    }

    /**
     * Exponent n by Richardson &amp; Zaki 1954, Transactions IChemE 32:35, without the wall term (from memory): 4.65 for
     * Re under 0.2, 4.35 Re^-0.03 to 1, 4.45 Re^-0.1 to 500, 2.39 above. The steps between the branches are the
     * authors'.
     *
     * @param reynolds Reynolds number of a single bubble, 0 to 1e7
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double richardsonZakiExponent(double reynolds) {
        Require.inRange("reynolds", reynolds, 0, 1e7, "", "give the Reynolds number of a single bubble");
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
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double zuberFindlay(double gasFluxMPerS, double liquidFluxMPerS, double driftSpeedMPerS) {
        requireGas(gasFluxMPerS);
        requireFlow(liquidFluxMPerS, driftSpeedMPerS, WALLIS_EXPONENT);
        double speed = CHURN_DISTRIBUTION * (gasFluxMPerS + liquidFluxMPerS) + driftSpeedMPerS;
        return speed > gasFluxMPerS ? gasFluxMPerS / speed : Double.NaN;
    }

    /**
     * Drift speed of churning flow, m/s: Zuber &amp; Findlay 1965, 1.53 (sigma g (rho - rho air)/rho^2)^0.25.
     *
     * @param densityKgPerM3 500 to 2000 kg/m3
     * @param surfaceTensionNPerM 0.005 to 0.2 N/m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double churnDriftSpeed(double densityKgPerM3, double surfaceTensionNPerM) {
        Require.inRange("densityKgPerM3", densityKgPerM3, 500, 2000, "kg/m3", "water has about 1000");
        Require.inRange("surfaceTensionNPerM", surfaceTensionNPerM, 0.005, 0.2, "N/m", "water has about 0.073");
        double lift = surfaceTensionNPerM * GRAVITY * (densityKgPerM3 - AIR_DENSITY);
        return 1.53 * Math.pow(lift / (densityKgPerM3 * densityKgPerM3), 0.25);
    }

    private static void requireGas(double gasFlux) {
        Require.inRange("gasFluxMPerS", gasFlux, 0, 10, "m/s", "give air flow over cross-section in m/s");
    }

    private static void requireFlow(double liquidFlux, double speed, double exponent) {
        Require.inRange(
                "liquidFluxMPerS", liquidFlux, -10, 10, "m/s", "give water flow over cross-section, up positive");
        Require.inRange("terminalSpeedMPerS", speed, 1e-6, 10, "m/s", "give the rise speed of a single bubble");
        Require.inRange("exponent", exponent, 1.01, 10, "", "use 2 for dirty bubbles of about a millimetre");
    }
}
