package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.foam.BubbleUptake;
import io.github.weirwise.internal.physics.seawater.Seawater;

/**
 * How much of its full load a bubble has time to gather on its way through the column, as a share, 0 to 1: an upper limit by
 * transport of a middling protein to a lone fresh bubble ({@link BubbleUptake}: never above k c t). {@link SkimmateStrength} takes
 * an assumed share; where that is far more than this one, the strength may be that much too high.
 */
record LoadDoubt(double transportShare) {
    /** Told where transport allows less than half of the assumed share. */
    private static final double TOLD_FROM = 2;

    /** The doubt where some skimmate comes from loaded water; none elsewhere. */
    static LoadDoubt of(SkimmerUnit unit, Settings settings, SteadyInputs inputs, SteadyPoint point) {
        double waterKgPerM3 = settings.condition().skimmableMgPerLitre() / 1000;
        double wayM = point.columnLevelM() - unit.column().openingMm() / 1000;
        if (!(point.skimmateM3PerS() > 0) || !(waterKgPerM3 > 0) || !(wayM > 0)) {
            return new LoadDoubt(1);
        }
        double speed = inputs.terminalSpeedMPerS();
        double kinematicViscosity = Seawater.viscosity(settings.practicalSalinity(), settings.waterCelsius())
                / Seawater.density(settings.practicalSalinity(), settings.waterCelsius());
        double transfer = BubbleUptake.transferSpeed(
                speed,
                FreshBubble.diameterM(unit.traits(), settings),
                kinematicViscosity,
                BubbleUptake.PROTEIN_DIFFUSIVITY);
        double gathered = transfer * waterKgPerM3 * wayM / speed;
        return new LoadDoubt(Math.min(1, gathered / SkimmateStrength.ADSORPTION.load(waterKgPerM3)));
    }

    /** How many times too high the assumed share may be, 1 or more. */
    double factor() {
        return Math.max(1, SkimmateStrength.COLLECTED_SHARE / transportShare);
    }

    boolean worthTelling() {
        return factor() > TOLD_FROM;
    }
}
