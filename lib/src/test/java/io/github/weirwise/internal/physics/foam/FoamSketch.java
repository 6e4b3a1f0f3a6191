package io.github.weirwise.internal.physics.foam;

/**
 * What a sketched column holds and gives, SI units; see {@link FoamColumn#sketched}. The laws and their sources are those of {@link
 * FoamColumn}.
 *
 * @param topM height of the foam's top: the lip, or about where the last bubbles burst
 * @param heldGasM3 gas in the foam
 * @param heldLiquidM3 liquid in the foam
 * @param heldLiquidHeadM integral of the liquid fraction over the height: the foam's weight per area as metres of water
 * @param shareAtLip share of the gas that outlives the way to the lip, 0 to 1
 * @param lipFraction liquid fraction at which the lip passes most liquid; packing when flooded
 * @param lipAgeS age of the bubbles at the lip; infinite when none gets there
 * @param lipRadiusM their radius; 0 when none gets there
 * @param liquidOverLipM3PerS liquid that leaves over the lip
 * @param flooded more gas arrives at the lip than foam can pass: liquid of a wet froth comes over
 * @since 0.1
 */
public record FoamSketch(
        double topM,
        double heldGasM3,
        double heldLiquidM3,
        double heldLiquidHeadM,
        double shareAtLip,
        double lipFraction,
        double lipAgeS,
        double lipRadiusM,
        double liquidOverLipM3PerS,
        boolean flooded) {
    /** Mean liquid fraction of the foam by volume, 0 to 1. */
    public double meanLiquidFraction() {
        return heldLiquidM3 / (heldLiquidM3 + heldGasM3);
    }
}
