package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;

/**
 * First moments of a tank, Monday midnight.
 */
public final class TankStart {
    private static final double OXYGEN_AT_START = 6.5;

    private TankStart() {}

    /**
     * A tank that has run for long: colonies full, load at the unit's reference, clean parts, empty cup, running as set.
     *
     * @param plan the plan
     * @param settings weir, flow, air, temperature and salinity; of the condition the load is taken, the dirt is not
     */
    public static TankState mature(TankPlan plan, Settings settings) {
        double litres = plan.body().runningLitres();
        double load = settings.condition().skimmableMgPerLitre() * litres / 1000;
        double[] y = running(plan, settings);
        y[SKIMMABLE_G] = load;
        y[REFRACTORY_G] = 1.5 * load;
        y[SOLIDS_G] = 0.3 * load;
        y[PAD_SOLIDS_G] = 2 * load;
        y[AMMONIA_G] = 0.05 * litres / 1000;
        y[NITRITE_G] = 0.05 * litres / 1000;
        y[NITRATE_G] = 10 * litres / 1000;
        y[AMMONIA_COLONY] = 1;
        y[NITRITE_COLONY] = 1;
        return new TankState(0, y);
    }

    /**
     * The same with everything as the settings' condition says, dirt, oil and slipped weir included; only the level beyond the
     * weir is the plan's own.
     *
     * @param plan the plan
     * @param settings weir, flow, air, temperature, salinity and condition
     */
    public static TankState exactly(TankPlan plan, Settings settings) {
        Condition condition = settings.condition();
        return mature(plan, settings)
                .with(NECK_FILM, condition.neckFouling())
                .with(AIR_LINE_CREEP, 1 - condition.airLineOpening())
                .with(PUMP_WEAR, Math.max(0, 1 - condition.injectorHealth()))
                .with(OIL, condition.filmBreaker())
                .with(AGENT, condition.foamBooster());
    }

    /**
     * A tank that was filled today: clean water, hardly any bacteria, new surfaces that give off residues.
     *
     * @param plan the plan
     * @param settings weir, flow, air, temperature and salinity
     */
    public static TankState fresh(TankPlan plan, Settings settings) {
        double litres = plan.body().runningLitres();
        double[] y = running(plan, settings);
        y[SKIMMABLE_G] = 0.3 * litres / 1000;
        y[REFRACTORY_G] = 0.3 * litres / 1000;
        y[AMMONIA_COLONY] = 0.01;
        y[NITRITE_COLONY] = 0.005;
        y[BREAK_IN_LEFT] = 1;
        return new TankState(0, y);
    }

    /** Water, reservoir and settings; everything runs, everything else is nothing. */
    private static double[] running(TankPlan plan, Settings settings) {
        double salinity = settings.practicalSalinity();
        double litres = plan.body().runningLitres();
        double kg = litres * Seawater.density(salinity, settings.waterCelsius()) / 1000;
        double saltKg = kg * salinity * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
        double[] y = new double[ALL];
        y[WATER_KG] = kg - saltKg;
        y[SALT_KG] = saltKg;
        y[ALKALINITY_EQ] = plan.parameters().value(TankParameter.ALKALINITY_MEQ_PER_LITRE) * litres / 1000;
        y[OXYGEN_MG_PER_LITRE] = OXYGEN_AT_START;
        y[RESERVOIR_LITRES] = plan.body().reservoirLitres();
        y[WEIR_CREST_MM] = settings.weirCrestMm();
        y[WEIR_SLIP_MM] = settings.condition().weirSlipMm();
        y[FLOW_LITRES_PER_HOUR] = settings.flowLitresPerHour();
        y[AIR_LITRES_PER_HOUR] = settings.airLitresPerHour();
        y[WATER_CELSIUS] = settings.waterCelsius();
        y[BACK_PRESSURE_PA] = settings.condition().backPressurePa();
        y[RETURN_PUMP_ON] = 1;
        y[INJECTOR_ON] = 1;
        y[TOP_OFF_ON] = 1;
        y[POWER_BACK_AT_HOURS] = Double.POSITIVE_INFINITY;
        return y;
    }
}
