package io.github.weirwise.demo.picture;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.SteadyInputs;

/**
 * The foam as it is drawn: how high it stands and how wet it looks.
 *
 * @param footMm where it stands on the water
 * @param topMm where it ends; the lip when it goes over
 * @param wetness -1 (dry, open) over 0 (as wanted) to 1 (water with bubbles)
 */
record FoamBody(double footMm, double topMm, double wetness) {
    private static final double STEP_MM = 1;
    /** A factor of ten in the amount is drawn as the full way from wanted to dry or wet. */
    private static final double DECADES = 1;

    static FoamBody of(Scene scene) {
        Column column = scene.unit().column();
        double foot = Math.max(
                column.openingMm(), Math.min(column.lipMm(), scene.point().columnLevelMm()));
        double ratio = scene.amountRatio();
        boolean flooding = scene.point().foamState() == FoamState.FLOODING;
        boolean arrives = flooding || ratio >= 0.02;
        double top = arrives ? column.lipMm() : breaksAtMm(scene, foot);
        double wetness = flooding ? 1 : Math.max(-1, Math.min(1, Math.log10(Math.max(1e-6, ratio)) / DECADES));
        return new FoamBody(foot, Math.max(foot, top), wetness);
    }

    /** The height at which the foam holds all the gas that it can keep alive. */
    private static double breaksAtMm(Scene scene, double footMm) {
        SteadyInputs inputs = SteadyInputs.of(scene.unit(), scene.settings());
        double gasLeftMm3 = inputs.airM3PerS() / scene.unit().columns() * inputs.meanLifeS() * 1e9;
        Column column = scene.unit().column();
        double gasShare = 1 - scene.unit().traits().meanFoamLiquidFraction();
        double height = footMm;
        while (height < column.lipMm() && gasLeftMm3 > 0) {
            double bore = column.boreAtMm(height);
            gasLeftMm3 -= gasShare * Math.PI / 4 * bore * bore * STEP_MM;
            height += STEP_MM;
        }
        return Math.min(height, column.lipMm() - 2);
    }
}
