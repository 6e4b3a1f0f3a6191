package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

import io.github.weirwise.internal.physics.seawater.Seawater;

/** Evaporation, top-off and what runs over the sump's rim. Called after the foam, whose loss the top-off replaces. */
final class WaterRates implements Rates {
    /** A quiet room, half saturated; the factor on the evaporation is set from a tank's own record. */
    private static final double ROOM_CELSIUS = 22;

    private static final double ROOM_HUMIDITY = 0.5;
    private static final double SEA = 35;
    /** How fast water above the rim runs off; only to keep the equations smooth. */
    private static final double RIM_PER_HOUR = 2;

    private static final double DRIED_OUT = 0.5;

    private final TankPlan plan;
    private final Pace p;
    private TankDraft draft;
    private double freshKgPerHour;
    private double lessKgPerHourPerSalinity;
    private double topOffKgPerLitre;
    private double topOffSaltShare;

    WaterRates(TankPlan plan) {
        this.plan = plan;
        p = new Pace(plan);
    }

    /** Evaporation falls in a straight line with salinity, so two points give all of it. */
    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
        double tower = p.of(TOWER_EVAPORATION_KG_PER_DAY);
        double fresh = p.runs(EVAPORATION_FACTOR) ? surfaceKgPerDay(0) + tower : 0;
        double salty = p.runs(EVAPORATION_FACTOR) ? surfaceKgPerDay(SEA) + tower : 0;
        freshKgPerHour = fresh / 24;
        lessKgPerHourPerSalinity = (fresh - salty) / SEA / 24;
        topOffKgPerLitre = Seawater.density(draft.y[RESERVOIR_SALINITY], draft.y[WATER_CELSIUS]) / 1000;
        topOffSaltShare = draft.y[RESERVOIR_SALINITY] * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
    }

    private double surfaceKgPerDay(double salinity) {
        return plan.body().surfaceM2()
                * Evaporation.ashraeKgPerM2Day(
                        draft.y[WATER_CELSIUS], salinity, ROOM_CELSIUS, ROOM_HUMIDITY, 0, p.of(EVAPORATION_FACTOR));
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        double evaporated = wetShare(now) * (freshKgPerHour - lessKgPerHourPerSalinity * now.practicalSalinity);
        dy[WATER_KG] -= evaporated;
        dy[EVAPORATED_KG] += evaporated;
        double topOff = topOffLitresPerHour(now, evaporated);
        double kg = topOff * topOffKgPerLitre;
        dy[RESERVOIR_LITRES] -= topOff;
        dy[WATER_KG] += kg * (1 - topOffSaltShare);
        dy[WATER_IN_KG] += kg * (1 - topOffSaltShare);
        dy[SALT_KG] += kg * topOffSaltShare;
        dy[SALT_IN_KG] += kg * topOffSaltShare;
        double spilled = RIM_PER_HOUR * Math.max(0, now.sumpLitres - plan.body().sumpCapacityLitres());
        if (spilled > 0) {
            TankDraft.leave(spilled / now.litres, TankDraft.Way.OTHER, p.of(NITROGEN_IN_ORGANICS), y, dy);
            dy[SPILLED_LITRES] += spilled;
        }
    }

    /** A tank that nobody tops off does not dry out entirely: past half of its water the equations mean nothing. */
    private double wetShare(Moment now) {
        double left = now.litres / plan.body().runningLitres();
        return Math.max(0, Math.min(1, 10 * (left - DRIED_OUT)));
    }

    private double topOffLitresPerHour(Moment now, double evaporatedKg) {
        if (!p.runs(TOP_OFF_RETURN_PER_HOUR)
                || !draft.is(TOP_OFF_ON)
                || draft.is(RESERVOIR_EMPTY)
                || !draft.powered()) {
            return 0;
        }
        if (draft.is(TOP_OFF_STUCK)) {
            return p.of(TOP_OFF_LIMIT_LITRES_PER_HOUR);
        }
        double losses = evaporatedKg + now.skimmateLitresPerHour;
        double gap = plan.body().sumpLitres() - now.sumpLitres;
        return Math.max(0, Math.min(p.of(TOP_OFF_LIMIT_LITRES_PER_HOUR), losses + p.of(TOP_OFF_RETURN_PER_HOUR) * gap));
    }
}
