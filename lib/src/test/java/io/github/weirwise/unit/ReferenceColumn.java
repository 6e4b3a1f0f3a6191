package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.FoamSketch;
import io.github.weirwise.internal.physics.foam.SettledColumn;
import java.util.List;

/**
 * A unit at rest by the full one-dimensional foam column ({@link io.github.weirwise.internal.physics.foam.FoamColumn}, whose sources stand
 * there; what it assumes beyond them is listed in {@link ColumnAssumptions}), against which the
 * fast form ({@link SteadyLaw}, {@link OperatingPoint}) is judged. Weir, holdup and balance of pressure are the same; the foam is
 * resolved by height instead of by means: a wet froth at the funnel base, bubbles that grow with age, suction, and the
 * foam's own weight from its profile. It costs thousands of times the fast form; {@link ColumnDetail#SKETCH} leaves out the suction
 * and costs some tens of times the fast form.
 *
 * <p>The mean life of a unit's bubbles is a fitted number and belongs to the law that it was fitted under: do not carry one
 * from the fast form into the reference column. {@link #withFittedLife} fits it.
 *
 * @param columnLevelMm level inside the bubbly column over the chamber floor
 * @param submergenceMm that level over the funnel base
 * @param foamWeightMm how much the foam's weight on the water pushes that level down, as mm of water outside
 * @param gasShareAtLip share of the air that leaves over the lip as foam, 0 to 1
 * @param skimmateMlPerDay liquid into the cup from all columns
 * @param liquidFractionAtLip liquid fraction of the foam just under the lip
 * @param meanFoamLiquidFraction mean liquid fraction of the foam by volume
 * @param lipBubbleMm diameter of the bubbles at the foam's top
 * @param lipAgeSeconds age of the bubbles at the lip; infinite when no foam gets there
 * @param foamTopMm height of the foam's top over the chamber floor
 * @param flooded water or near-water runs over the lip, or the column cannot pass the air
 * @param layers the foam by height, from the water upward; empty when there is none and in a sketch
 * @since 0.1
 */
public record ReferenceColumn(
        double columnLevelMm,
        double submergenceMm,
        double foamWeightMm,
        double gasShareAtLip,
        double skimmateMlPerDay,
        double liquidFractionAtLip,
        double meanFoamLiquidFraction,
        double lipBubbleMm,
        double lipAgeSeconds,
        double foamTopMm,
        boolean flooded,
        List<FoamLayer> layers) {
    /** Copies the layers. */
    public ReferenceColumn {
        layers = List.copyOf(layers);
    }

    /** The unit at rest under the default assumptions. */
    public static ReferenceColumn of(SkimmerUnit unit, Settings settings) {
        return of(unit, settings, ColumnAssumptions.DEFAULT);
    }

    /** The unit at rest under other assumptions. */
    public static ReferenceColumn of(SkimmerUnit unit, Settings settings, ColumnAssumptions assumptions) {
        return new ColumnSolution(unit, settings, assumptions).solve();
    }

    /**
     * The unit with the mean life with which the reference column gives its target's amount at a setting.
     *
     * @throws IllegalArgumentException if no mean life from half to twice the unit's own does
     */
    public static SkimmerUnit withFittedLife(SkimmerUnit unit, Settings settings, ColumnAssumptions assumptions) {
        return ColumnSolution.fitted(unit, settings, assumptions);
    }

    /** The result for foam that was solved. */
    static ReferenceColumn of(SkimmerUnit unit, double levelM, double weightM, double air, SettledColumn foam) {
        List<FoamLayer> layers = foam.slices().stream()
                .map(slice -> new FoamLayer(
                        slice.heightM() * 1000,
                        slice.liquidFraction(),
                        slice.gasFlowM3PerS() / air,
                        slice.bubbleSpeedMPerS() * 60000,
                        slice.ageS(),
                        slice.bubbleRadiusM() * 2000))
                .toList();
        return new ReferenceColumn(
                levelM * 1000,
                levelM * 1000 - unit.column().funnelBaseMm(),
                weightM * 1000,
                foam.gasOverLipM3PerS() / air,
                foam.liquidOverLipM3PerS() * unit.columns() * 1e6 * 86400,
                foam.lipFraction(),
                foam.meanLiquidFraction(),
                foam.lipRadiusM() * 2000,
                foam.lipAgeS(),
                foam.topM() * 1000,
                foam.flooded(),
                layers);
    }

    /** The result for foam that was sketched. */
    static ReferenceColumn of(SkimmerUnit unit, double levelM, double weightM, FoamSketch foam) {
        return new ReferenceColumn(
                levelM * 1000,
                levelM * 1000 - unit.column().funnelBaseMm(),
                weightM * 1000,
                foam.shareAtLip(),
                foam.liquidOverLipM3PerS() * unit.columns() * 1e6 * 86400,
                foam.lipFraction(),
                foam.meanLiquidFraction(),
                foam.lipRadiusM() * 2000,
                foam.lipAgeS(),
                foam.topM() * 1000,
                foam.flooded(),
                List.of());
    }
}
