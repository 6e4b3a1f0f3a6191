package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.internal.physics.seawater.Seawater;

/** A state taken apart for work: one vector for what flows, plain fields for what is set. Lives inside one call. */
final class TankDraft {
    private static final double LEAST_KG = 1e-3;
    private static final double MOST_SALINITY = 150;
    /** What leaves in proportion when tank water leaves. */
    private static final int[] CARRIED = {
        WATER_KG, SALT_KG, ALKALINITY_EQ, SKIMMABLE_G, REFRACTORY_G, AMMONIA_G, NITRITE_G, NITRATE_G
    };

    /** Ways out of the tank, each with its ledger of water, salt, organics and nitrogen. */
    enum Way {
        FOAM(WATER_SKIMMED_KG, SALT_SKIMMED_KG, ORGANICS_SKIMMED_G, NITROGEN_SKIMMED_G),
        OTHER(WATER_OUT_KG, SALT_OUT_KG, ORGANICS_OUT_G, NITROGEN_OUT_G);

        private final int[] ledger;

        Way(int... ledger) {
            this.ledger = ledger;
        }
    }

    final double[] y;
    double hours;

    TankDraft(TankState state) {
        hours = state.hours();
        y = state.all();
    }

    TankState state() {
        return new TankState(hours, y);
    }

    boolean is(int flag) {
        return y[flag] != 0;
    }

    void set(int flag, boolean value) {
        y[flag] = value ? 1 : 0;
    }

    boolean powered() {
        return y[POWER_BACK_AT_HOURS] == Double.POSITIVE_INFINITY;
    }

    boolean flowing() {
        return is(RETURN_PUMP_ON) && powered();
    }

    double practicalSalinity() {
        return practicalSalinity(y);
    }

    /** Within what sea water's formulas take: a trial step of the integration may ask for less than nothing. */
    static double practicalSalinity(double[] y) {
        double share = Math.max(0, y[SALT_KG]) / Math.max(LEAST_KG, y[WATER_KG] + y[SALT_KG]);
        return Math.min(MOST_SALINITY, 1000 * share / Seawater.GRAMS_PER_KG_PER_PRACTICAL);
    }

    double litres() {
        return litres(y, practicalSalinity(), y[WATER_CELSIUS]);
    }

    static double litres(double[] y, double practicalSalinity, double celsius) {
        return 1000 * Math.max(LEAST_KG, y[WATER_KG] + y[SALT_KG]) / Seawater.density(practicalSalinity, celsius);
    }

    double sumpLitres(TankBody body) {
        return litres() - body.heldLitres() + (flowing() ? 0 : body.drainDownLitres());
    }

    /** Takes tank water out, with everything dissolved in it. */
    void remove(double litres, double nitrogenInOrganics) {
        leave(Math.min(1, litres / litres()), Way.OTHER, nitrogenInOrganics, y, y);
    }

    /**
     * Takes a share of the water and of everything dissolved in it off stocks or rates.
     *
     * @return organics that leave
     */
    static double leave(double share, Way way, double nitrogenInOrganics, double[] y, double[] from) {
        double organics = share * (y[SKIMMABLE_G] + y[REFRACTORY_G]);
        from[way.ledger[0]] += share * y[WATER_KG];
        from[way.ledger[1]] += share * y[SALT_KG];
        from[way.ledger[2]] += organics;
        from[way.ledger[3]] += share * (y[AMMONIA_G] + y[NITRITE_G] + y[NITRATE_G]) + nitrogenInOrganics * organics;
        for (int i : CARRIED) {
            from[i] -= share * y[i];
        }
        return organics;
    }

    /** Adds clean water of a salinity; a sudden change of the tank's salinity harms the bacteria. */
    void add(double litres, double salinity, double alkalinityMeqPerLitre) {
        double before = practicalSalinity();
        double kg = litres * Seawater.density(salinity, y[WATER_CELSIUS]) / 1000;
        double saltKg = kg * salinity * Seawater.GRAMS_PER_KG_PER_PRACTICAL / 1000;
        y[SALT_KG] += saltKg;
        y[SALT_IN_KG] += saltKg;
        y[WATER_KG] += kg - saltKg;
        y[WATER_IN_KG] += kg - saltKg;
        y[ALKALINITY_EQ] += litres * alkalinityMeqPerLitre / 1000 * Math.min(1, salinity / 35);
        double alive = Nitrification.survivingSalinityShock(practicalSalinity() - before);
        y[AMMONIA_COLONY] *= alive;
        y[NITRITE_COLONY] *= alive;
    }

    /** What the sump cannot hold runs on the floor. */
    void spillOver(TankBody body, double nitrogenInOrganics) {
        double over = sumpLitres(body) - body.sumpCapacityLitres();
        if (over > 0) {
            remove(over, nitrogenInOrganics);
            y[SPILLED_LITRES] += over;
        }
    }
}
