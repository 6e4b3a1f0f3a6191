package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

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
    private final TankParameters p;
    private final boolean evaporating;
    private final boolean toppingOff;
    private final double returnPerHour;
    private final double limitLitresPerHour;
    private final double nitrogenInOrganics;
    private TankDraft draft;
    private double freshKgPerHour;
    private double lessKgPerHourPerSalinity;
    private double topOffKgPerLitre;
    private double topOffSaltShare;

    WaterRates(TankPlan plan) {
        this.plan = plan;
        p = plan.parameters();
        evaporating = p.runs(TankProcess.EVAPORATION);
        toppingOff = p.runs(TankProcess.TOP_OFF);
        returnPerHour = p.value(TankParameter.TOP_OFF_RETURN_PER_HOUR);
        limitLitresPerHour = p.value(TankParameter.TOP_OFF_LIMIT_LITRES_PER_HOUR);
        nitrogenInOrganics = p.value(TankParameter.NITROGEN_IN_ORGANICS);
    }

    /** Evaporation falls in a straight line with salinity, so two points give all of it. */
    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
        double tower = p.value(TankParameter.TOWER_EVAPORATION_KG_PER_DAY);
        double fresh = evaporating ? surfaceKgPerDay(0) + tower : 0;
        double salty = evaporating ? surfaceKgPerDay(SEA) + tower : 0;
        freshKgPerHour = fresh / 24;
        lessKgPerHourPerSalinity = (fresh - salty) / SEA / 24;
        topOffKgPerLitre = Seawater.density(draft.y[RESERVOIR_SALINITY], draft.y[WATER_CELSIUS]) / 1000;
        topOffSaltShare = draft.y[RESERVOIR_SALINITY] * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
    }

    private double surfaceKgPerDay(double salinity) {
        return plan.body().surfaceM2()
                * Evaporation.ashraeKgPerM2Day(
                        draft.y[WATER_CELSIUS],
                        salinity,
                        ROOM_CELSIUS,
                        ROOM_HUMIDITY,
                        0,
                        p.value(TankParameter.EVAPORATION_FACTOR));
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
            TankDraft.leave(spilled / now.litres, TankDraft.Way.OTHER, nitrogenInOrganics, y, dy);
            dy[SPILLED_LITRES] += spilled;
        }
    }

    /** A tank that nobody tops off does not dry out entirely: past half of its water the equations mean nothing. */
    private double wetShare(Moment now) {
        double left = now.litres / plan.body().runningLitres();
        return Math.max(0, Math.min(1, 10 * (left - DRIED_OUT)));
    }

    private double topOffLitresPerHour(Moment now, double evaporatedKg) {
        if (!toppingOff || !draft.is(TOP_OFF_ON) || draft.is(RESERVOIR_EMPTY) || !draft.powered()) {
            return 0;
        }
        if (draft.is(TOP_OFF_STUCK)) {
            return limitLitresPerHour;
        }
        double losses = evaporatedKg + now.skimmateLitresPerHour;
        double gap = plan.body().sumpLitres() - now.sumpLitres;
        return Math.max(0, Math.min(limitLitresPerHour, losses + returnPerHour * gap));
    }
}
