package io.github.weirwise.tank;

import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.util.List;

/** Tanks that the tests run. */
public final class Tanks {
    private Tanks() {}

    public static TankPlan plan() {
        return TankPlan.around(FirstRoundUnits.small(), 300);
    }

    /** Rated settings with the weir where the unit's target is met. */
    public static Settings onTarget(SkimmerUnit unit) {
        Settings rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double crest = WeirSetting.crestForSkimmate(unit, rated, unit.target().skimmateMlPerDay())
                .orElseThrow();
        return rated.withWeirCrestMm(crest);
    }

    public static TankState mature(TankPlan plan) {
        return TankStart.mature(plan, onTarget(plan.unit()));
    }

    /** A skimmer that gives the same whatever happens. */
    public static SkimmerLaw steady(double mlPerDay, double strengthMgPerLitre) {
        return settings -> new FoamOutput(mlPerDay, strengthMgPerLitre, 70, false);
    }

    /** The state after some days without any event. */
    public static TankState after(double days, TankPlan plan, TankState from) {
        return new TankSimulator(plan).advance(from, from.hours() + 24 * days, List.of());
    }

    /** Ammonia, nitrite and nitrate, g N. */
    static double nitrogenG(TankState state) {
        return state.of(Stock.AMMONIA_G) + state.of(Stock.NITRITE_G) + state.of(Stock.NITRATE_G);
    }
}
