package io.github.weirwise.tank;

import io.github.weirwise.internal.physics.seawater.Seawater;

/** A state taken apart for work: one vector for what flows, plain fields for what is set. Lives inside one call. */
final class TankDraft {
    static final int WATER = 0;
    static final int SALT = 1;
    static final int ALKALINITY = 2;
    static final int OXYGEN = 3;
    static final int SKIMMABLE = 4;
    static final int REFRACTORY = 5;
    static final int SOLIDS = 6;
    static final int PAD_SOLIDS = 7;
    static final int DIGESTING = 8;
    static final int AMMONIA = 9;
    static final int NITRITE = 10;
    static final int NITRATE = 11;
    static final int AMMONIA_COLONY = 12;
    static final int NITRITE_COLONY = 13;
    static final int NECK = 14;
    static final int AIR_LINE = 15;
    static final int NOZZLE = 16;
    static final int WEAR = 17;
    static final int PAD = 18;
    static final int STRAINER = 19;
    static final int BREAK_IN = 20;
    static final int SKIMMATE = 21;
    static final int FILM_LOST = 22;
    static final int OIL = 23;
    static final int AGENT = 24;
    static final int CUP = 25;
    static final int CONTAINER = 26;
    static final int COLLECTED = 27;
    static final int RESERVOIR = 28;
    static final int FIRST_OF_LEDGER = 29;
    static final int WATER_IN = 29;
    static final int EVAPORATED = 30;
    static final int WATER_SKIMMED = 31;
    static final int WATER_OUT = 32;
    static final int SALT_IN = 33;
    static final int SALT_SKIMMED = 34;
    static final int SALT_OUT = 35;
    static final int NITROGEN_IN = 36;
    static final int NITROGEN_SKIMMED = 37;
    static final int NITROGEN_RETAINED = 38;
    static final int NITROGEN_GAS = 39;
    static final int NITROGEN_OUT = 40;
    static final int ORGANICS_IN = 41;
    static final int ORGANICS_SKIMMED = 42;
    static final int ORGANICS_MINERALISED = 43;
    static final int ORGANICS_OUT = 44;
    static final int SKIMMATE_ML = 45;
    static final int SPILLED = 46;
    static final int SIZE = 47;
    private static final double LEAST_KG = 1e-3;
    private static final double MOST_SALINITY = 150;
    /** What leaves in proportion when tank water leaves. */
    private static final int[] CARRIED = {WATER, SALT, ALKALINITY, SKIMMABLE, REFRACTORY, AMMONIA, NITRITE, NITRATE};

    final double[] y;
    double hours;
    double weirCrestMm;
    double weirSlipMm;
    double flowLitresPerHour;
    double airLitresPerHour;
    double waterCelsius;
    double backPressurePa;
    double reservoirSalinity;
    boolean airLineInWater;
    boolean returnPumpOn;
    boolean injectorOn;
    boolean topOffOn;
    boolean topOffStuck;
    double powerBackAtHours;
    boolean reservoirEmpty;
    boolean cupFull;
    boolean containerFull;

    TankDraft(TankState state) {
        hours = state.hours();
        y = TankVector.of(state);
        set(state.controls());
    }

    private void set(Controls c) {
        weirCrestMm = c.weirCrestMm();
        weirSlipMm = c.weirSlipMm();
        flowLitresPerHour = c.flowLitresPerHour();
        airLitresPerHour = c.airLitresPerHour();
        waterCelsius = c.waterCelsius();
        backPressurePa = c.backPressurePa();
        reservoirSalinity = c.reservoirSalinity();
        airLineInWater = c.airLineInWater();
        returnPumpOn = c.returnPumpOn();
        injectorOn = c.injectorOn();
        topOffOn = c.topOffOn();
        topOffStuck = c.topOffStuck();
        powerBackAtHours = c.powerBackAtHours();
        reservoirEmpty = c.reservoirEmpty();
        cupFull = c.cupFull();
        containerFull = c.containerFull();
    }

    Controls controls() {
        return new Controls(
                weirCrestMm,
                weirSlipMm,
                flowLitresPerHour,
                airLitresPerHour,
                waterCelsius,
                backPressurePa,
                reservoirSalinity,
                airLineInWater,
                returnPumpOn,
                injectorOn,
                topOffOn,
                topOffStuck,
                powerBackAtHours,
                reservoirEmpty,
                cupFull,
                containerFull);
    }

    TankState state() {
        return TankVector.state(hours, y, controls());
    }

    boolean powered() {
        return powerBackAtHours == Double.POSITIVE_INFINITY;
    }

    boolean flowing() {
        return returnPumpOn && powered();
    }

    double practicalSalinity() {
        return practicalSalinity(y);
    }

    /** Within what sea water's formulas take: a trial step of the integration may ask for less than nothing. */
    static double practicalSalinity(double[] y) {
        double share = Math.max(0, y[SALT]) / Math.max(LEAST_KG, y[WATER] + y[SALT]);
        return Math.min(MOST_SALINITY, 1000 * share / Seawater.GRAMS_PER_KG_PER_PRACTICAL);
    }

    double litres() {
        return litres(y, practicalSalinity(), waterCelsius);
    }

    static double litres(double[] y, double practicalSalinity, double celsius) {
        return 1000 * Math.max(LEAST_KG, y[WATER] + y[SALT]) / Seawater.density(practicalSalinity, celsius);
    }

    double sumpLitres(TankBody body) {
        return litres() - body.heldLitres() + (flowing() ? 0 : body.drainDownLitres());
    }

    /** Takes tank water out, with everything dissolved in it. */
    void remove(double litres, double nitrogenInOrganics) {
        double share = Math.min(1, litres / litres());
        y[WATER_OUT] += share * y[WATER];
        y[SALT_OUT] += share * y[SALT];
        y[ORGANICS_OUT] += share * (y[SKIMMABLE] + y[REFRACTORY]);
        y[NITROGEN_OUT] +=
                share * (y[AMMONIA] + y[NITRITE] + y[NITRATE] + nitrogenInOrganics * (y[SKIMMABLE] + y[REFRACTORY]));
        carryOff(share, y, y);
    }

    /** Takes a share of everything dissolved (and of the water) off stocks or rates. */
    static void carryOff(double share, double[] y, double[] from) {
        for (int i : CARRIED) {
            from[i] -= share * y[i];
        }
    }

    /** Adds clean water of a salinity; a sudden change of the tank's salinity harms the bacteria. */
    void add(double litres, double salinity, double alkalinityMeqPerLitre) {
        double before = practicalSalinity();
        double kg = litres * Seawater.density(salinity, waterCelsius) / 1000;
        double saltKg = kg * salinity * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
        y[SALT] += saltKg;
        y[SALT_IN] += saltKg;
        y[WATER] += kg - saltKg;
        y[WATER_IN] += kg - saltKg;
        y[ALKALINITY] += litres * alkalinityMeqPerLitre / 1000 * Math.min(1, salinity / 35);
        double alive = Nitrification.survivingSalinityShock(practicalSalinity() - before);
        y[AMMONIA_COLONY] *= alive;
        y[NITRITE_COLONY] *= alive;
    }

    /** What the sump cannot hold runs on the floor. */
    void spillOver(TankBody body, double nitrogenInOrganics) {
        double over = sumpLitres(body) - body.sumpCapacityLitres();
        if (over > 0) {
            remove(over, nitrogenInOrganics);
            y[SPILLED] += over;
        }
    }
}
