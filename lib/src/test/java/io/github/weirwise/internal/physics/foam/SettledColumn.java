package io.github.weirwise.internal.physics.foam;

import java.util.List;

/**
 * A foam column at rest in time, SI units; see {@link FoamColumn#settled}. The laws and their sources are those of {@link FoamColumn}.
 *
 * @param reachesLip whether any foam outlives the way to the lip
 * @param topM height of the foam's top: the lip, or where the last bubbles burst
 * @param gasOverLipM3PerS gas that leaves over the lip as foam
 * @param liquidOverLipM3PerS liquid that leaves over the lip
 * @param lipFraction liquid fraction just under the lip
 * @param lipAgeS age of the bubbles at the lip; infinite when none gets there
 * @param lipRadiusM radius of the bubbles at the lip (at the top when none gets there)
 * @param heldGasM3 gas in the foam
 * @param heldLiquidM3 liquid in the foam
 * @param heldLiquidHeadM integral of the liquid fraction over the height: the foam's weight per area as metres of water
 * @param flooded more gas arrives at the lip than foam can pass: liquid of a wet froth comes over
 * @param slices the foam from the water upward, at the steps of the solution
 * @since 0.1
 */
public record SettledColumn(
        boolean reachesLip,
        double topM,
        double gasOverLipM3PerS,
        double liquidOverLipM3PerS,
        double lipFraction,
        double lipAgeS,
        double lipRadiusM,
        double heldGasM3,
        double heldLiquidM3,
        double heldLiquidHeadM,
        boolean flooded,
        List<FoamSlice> slices) {
    /** Copies the slices. */
    public SettledColumn {
        slices = List.copyOf(slices);
    }

    /** Mean liquid fraction of the foam by volume, 0 to 1. */
    public double meanLiquidFraction() {
        return heldLiquidM3 / (heldLiquidM3 + heldGasM3);
    }

    /**
     * Liquid fraction at a height, between the slices in a straight line; that of the nearest end outside the foam.
     *
     * @param heightM over the column's floor; any number, never throws
     */
    public double liquidFractionAt(double heightM) {
        FoamSlice below = slices.get(0);
        for (FoamSlice above : slices) {
            if (above.heightM() >= heightM) {
                double span = above.heightM() - below.heightM();
                double along = span > 0 ? Math.max(0, (heightM - below.heightM()) / span) : 1;
                return below.liquidFraction() + along * (above.liquidFraction() - below.liquidFraction());
            }
            below = above;
        }
        return below.liquidFraction();
    }
}
