package io.github.weirwise.tank;

import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;

/**
 * First moments of a tank, Monday midnight.
 */
public final class TankStart {
    private static final double OXYGEN_MG_PER_LITRE = 6.5;

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
        return start(
                plan,
                settings,
                new TankState.Organics(load, 1.5 * load, 0.3 * load, 2 * load, 0),
                new TankState.Nitrogen(0.05 * litres / 1000, 0.05 * litres / 1000, 10 * litres / 1000),
                new TankState.Media(1, 1),
                0);
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
        TankState clean = mature(plan, settings);
        double wear = Math.max(0, 1 - condition.injectorHealth());
        return new TankState(
                clean.hours(),
                clean.water(),
                clean.organics(),
                clean.nitrogen(),
                clean.media(),
                new TankState.Parts(condition.neckFouling(), 1 - condition.airLineOpening(), 0, wear, 0, 0, 0),
                new TankState.Foam(0, 0, condition.filmBreaker(), condition.foamBooster()),
                clean.vessels(),
                clean.controls(),
                clean.ledger());
    }

    /**
     * A tank that was filled today: clean water, hardly any bacteria, new surfaces that give off residues.
     *
     * @param plan the plan
     * @param settings weir, flow, air, temperature and salinity
     */
    public static TankState fresh(TankPlan plan, Settings settings) {
        double litres = plan.body().runningLitres();
        return start(
                plan,
                settings,
                new TankState.Organics(0.3 * litres / 1000, 0.3 * litres / 1000, 0, 0, 0),
                new TankState.Nitrogen(0, 0, 0),
                new TankState.Media(0.01, 0.005),
                1);
    }

    private static TankState start(
            TankPlan plan,
            Settings settings,
            TankState.Organics organics,
            TankState.Nitrogen nitrogen,
            TankState.Media media,
            double breakIn) {
        double salinity = settings.practicalSalinity();
        double litres = plan.body().runningLitres();
        double kg = litres * Seawater.density(salinity, settings.waterCelsius()) / 1000;
        double saltKg = kg * salinity * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
        double alkalinity = plan.parameters().value(TankParameter.ALKALINITY_MEQ_PER_LITRE) * litres / 1000;
        return new TankState(
                0,
                new TankState.Water(kg - saltKg, saltKg, alkalinity, OXYGEN_MG_PER_LITRE),
                organics,
                nitrogen,
                media,
                new TankState.Parts(0, 0, 0, 0, 0, 0, breakIn),
                new TankState.Foam(0, 0, 0, 0),
                new TankState.Vessels(0, 0, 0, plan.body().reservoirLitres()),
                controls(settings),
                Ledger.EMPTY);
    }

    private static Controls controls(Settings settings) {
        Condition condition = settings.condition();
        return new Controls(
                settings.weirCrestMm(),
                condition.weirSlipMm(),
                settings.flowLitresPerHour(),
                settings.airLitresPerHour(),
                settings.waterCelsius(),
                condition.backPressurePa(),
                0,
                false,
                true,
                true,
                true,
                false,
                Double.POSITIVE_INFINITY,
                false,
                false,
                false);
    }
}
