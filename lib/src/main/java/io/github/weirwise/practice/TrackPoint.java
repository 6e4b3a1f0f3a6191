package io.github.weirwise.practice;

import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankConditions;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;

/**
 * True course of a session at one moment, without errors of reading; for the debrief, not for the trainee.
 *
 * @param hours on the scenario's clock
 * @param submergenceMm column level over the funnel base as it settles
 * @param skimmateMlPerDay what the foam gives
 * @param collectedMl what is in cup or container
 * @param weirCrestMm crest as its mark says
 * @param flooding whether water runs into the cup, or more than wanted into a full one
 * @param stressed whether the water harms animals
 * @param organicsSkimmedG organics taken out so far
 * @param skimmateMl skimmate taken out so far
 * @param spilledLitres water and skimmate on the floor so far
 */
public record TrackPoint(
        double hours,
        double submergenceMm,
        double skimmateMlPerDay,
        double collectedMl,
        double weirCrestMm,
        boolean flooding,
        boolean stressed,
        double organicsSkimmedG,
        double skimmateMl,
        double spilledLitres) {
    private static final double FLOOD_MULTIPLE = 10;

    static TrackPoint of(TankPlan plan, TankSimulator simulator, TankState state) {
        OperatingPoint point = simulator.operatingPoint(state);
        double amount = state.of(Stock.SKIMMATE_ML_PER_DAY);
        SkimmerUnit unit = plan.unit();
        return new TrackPoint(
                state.hours(),
                point.submergenceMm(),
                amount,
                state.of(Stock.CUP_ML) + state.of(Stock.CONTAINER_ML),
                state.of(Stock.WEIR_CREST_MM),
                amount > FLOOD_MULTIPLE * unit.target().skimmateMlPerDay()
                        || state.is(Stock.CUP_FULL)
                                && amount > unit.target().skimmateBandMlPerDay().high(),
                !TankConditions.of(plan, state).warnings().isEmpty(),
                state.of(Stock.ORGANICS_SKIMMED_G),
                state.of(Stock.SKIMMATE_ML),
                state.of(Stock.SPILLED_LITRES));
    }

    /** Whether the amount lies in the wanted band and nothing floods. */
    public boolean inBand(Target target) {
        return !flooding && target.skimmateBandMlPerDay().contains(skimmateMlPerDay);
    }
}
