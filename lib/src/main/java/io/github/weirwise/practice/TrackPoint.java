package io.github.weirwise.practice;

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
        double amount = state.foam().skimmateMlPerDay();
        SkimmerUnit unit = plan.unit();
        return new TrackPoint(
                state.hours(),
                point.submergenceMm(),
                amount,
                state.vessels().cupMl() + state.vessels().containerMl(),
                state.controls().weirCrestMm(),
                amount > FLOOD_MULTIPLE * unit.target().skimmateMlPerDay()
                        || state.controls().cupFull()
                                && amount > unit.target().skimmateBandMlPerDay().high(),
                !TankConditions.of(plan, state).warnings().isEmpty(),
                state.ledger().organicsSkimmedG(),
                state.ledger().skimmateMl(),
                state.ledger().spilledLitres());
    }

    /** Whether the amount lies in the wanted band and nothing floods. */
    public boolean inBand(Target target) {
        return !flooding && target.skimmateBandMlPerDay().contains(skimmateMlPerDay);
    }
}
