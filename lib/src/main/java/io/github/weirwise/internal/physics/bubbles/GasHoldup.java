package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Require;

/**
 * Gas holdup (share of the column's volume that is gas, 0 to 1) from the fluxes of gas and liquid (m/s), by the drift
 * flux of Wallis (1969) and Richardson &amp; Zaki (1954).
 *
 * <p>Fluxes are volume flows over the cross-section, positive upward; gas flux is never negative. The balance is jg (1 -
 * e) - jl e = U e (1 - e)^n. Its lower root is the bubbly column; when there is none, the column cannot pass the gas
 * steadily (it floods) and the answer is {@link Double#NaN}.
 */
public final class GasHoldup {

    private GasHoldup() {}

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
        Require.inRange("gasFluxMPerS", gasFluxMPerS, 0, 10, "m/s", "give air flow over cross-section in m/s");
        Require.inRange(
                "liquidFluxMPerS", liquidFluxMPerS, -10, 10, "m/s", "give water flow over cross-section, up positive");
        Require.inRange(
                "terminalSpeedMPerS", terminalSpeedMPerS, 1e-6, 10, "m/s", "give the rise speed of a single bubble");
        Require.inRange("exponent", exponent, 1.01, 10, "", "use 2 for dirty bubbles of about a millimetre");
        if (gasFluxMPerS == 0) {
            return 0;
        }
        return new DriftFlux(gasFluxMPerS, liquidFluxMPerS, terminalSpeedMPerS, exponent).lowerRoot();
    }
}
