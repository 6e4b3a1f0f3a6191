package io.github.weirwise.evidence;

import io.github.weirwise.tank.Routine;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.util.List;

/** Tanks that several evidence commands run: usual size for the unit, usual keeping, weir where the target is met. */
final class TankScenes {
    static final double YEAR_HOURS = 24 * 365;

    private TankScenes() {}

    static TankPlan plan(SkimmerUnit unit) {
        return TankPlan.around(unit, unit.ratedFlowLitresPerHour() / 4);
    }

    static Settings onTarget(SkimmerUnit unit) {
        Settings rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double crest = WeirSetting.crestForSkimmate(unit, rated, unit.target().skimmateMlPerDay())
                .orElseThrow();
        return rated.withWeirCrestMm(crest);
    }

    static List<TankEvent> usualYear(TankPlan plan) {
        return Routine.USUAL.events(plan, 0, YEAR_HOURS);
    }

    /** Two weeks in, Monday midnight, after usual keeping. */
    static TankState settled(TankPlan plan) {
        TankState start = TankStart.mature(plan, onTarget(plan.unit()));
        return new TankSimulator(plan).advance(start, 24 * 14, Routine.USUAL.events(plan, 0, 24 * 14));
    }
}
