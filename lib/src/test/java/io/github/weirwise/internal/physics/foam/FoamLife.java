package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * The law of lives of bubbles in a foam: the share S(t) = (1 + t/theta)^-alpha that still lives after t seconds, with
 * theta = Sigma (alpha - 1), and what share of the gas outlives a foam of a given volume.
 *
 * <p>Sigma is Bikerman's foaminess (foam volume over gas flow of a foam that all bursts; Bikerman 1938, Transactions of
 * the Faraday Society 34:634). The power law (Lomax) is an assumption: no measured law of lives for tank foam is known.
 * Alpha near 1 is a wide spread of lives, a large alpha approaches exp(-t/Sigma).
 *
 * @param meanLifeS Sigma, mean life of a bubble, 1e-3 to 1e6 s
 * @param alpha tail exponent, above 1 (1.001 to 1000)
 * @since 0.1
 */
public record FoamLife(double meanLifeS, double alpha) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public FoamLife {
        Require.inRange("meanLifeS", meanLifeS, 1e-3, 1e6, "s", "tank foam lives for tens of seconds on average");
        Require.inRange("alpha", alpha, 1.001, 1000, "", "use 1.2; at 1 the mean life would be infinite");
    }

    /** The time scale theta = Sigma (alpha - 1), s. */
    public double thetaS() {
        return meanLifeS * (alpha - 1);
    }

    /**
     * Share of bubbles that live longer than {@code ageS}, 1 down to 0.
     *
     * @param ageS 0 to 1e12 s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double survival(double ageS) {
        Require.inRange("ageS", ageS, 0, 1e12, "s", "give the time since the bubble was made");
        return Math.pow(1 + ageS / thetaS(), -alpha);
    }

    /**
     * Share of the gas that leaves the top of a foam as foam, (1 - V/(Q Sigma))^(alpha/(alpha - 1)), zero when V &gt;= Q
     * Sigma. It follows from V = Q times the integral of S over the ages in the foam, when the gas of burst bubbles vents
     * without lifting the rest.
     *
     * @param gasFlowM3PerS gas into the foam, 0 to 10 m3/s; 0 gives 0
     * @param foamGasVolumeM3 gas held by the foam between water and lip, 0 to 100 m3
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double survivingShare(double gasFlowM3PerS, double foamGasVolumeM3) {
        requireFoam(gasFlowM3PerS, foamGasVolumeM3);
        double rest = 1 - foamGasVolumeM3 / (gasFlowM3PerS * meanLifeS);
        // Also no gas at all: 0/0 and V/0 both fail this comparison.
        return rest > 0 ? Math.pow(rest, alpha / (alpha - 1)) : 0;
    }

    /**
     * Age of the foam at the lip, s: theta ((1 - V/(Q Sigma))^(-1/(alpha - 1)) - 1); infinite when no foam gets there.
     *
     * @param gasFlowM3PerS gas into the foam, 0 to 10 m3/s
     * @param foamGasVolumeM3 gas held by the foam between water and lip, 0 to 100 m3
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double ageAtTopS(double gasFlowM3PerS, double foamGasVolumeM3) {
        requireFoam(gasFlowM3PerS, foamGasVolumeM3);
        double rest = 1 - foamGasVolumeM3 / (gasFlowM3PerS * meanLifeS);
        return rest > 0 ? thetaS() * (Math.pow(rest, -1 / (alpha - 1)) - 1) : Double.POSITIVE_INFINITY;
    }

    private static void requireFoam(double gasFlow, double volume) {
        Require.inRange("gasFlowM3PerS", gasFlow, 0, 10, "m3/s", "100 L/h is 2.8e-5 m3/s");
        Require.inRange("foamGasVolumeM3", volume, 0, 100, "m3", "one litre is 0.001 m3");
    }
}
