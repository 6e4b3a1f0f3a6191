package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

/** Ammonia to nitrite to nitrate to gas, with the alkalinity that it costs, and the growth of the colonies. */
final class NitrogenRates implements Rates {
    private final Pace p;
    private final Biofilter biofilter;
    private double mediaM2PerHour;
    private double saturated;

    NitrogenRates(TankPlan plan) {
        p = new Pace(plan);
        biofilter = plan.biofilter();
    }

    @Override
    public void begin(TankDraft draft) {
        double drowned = biofilter.drownedShare();
        double wet = 1 - drowned + drowned * p.of(DROWNED_MEDIA_WORTH);
        double worth = draft.flowing() ? wet : p.of(STOPPED_MEDIA_WORTH);
        mediaM2PerHour = p.runs(NITRIFICATION_SATURATED) ? worth * biofilter.mediaM2() / 24 : 0;
        saturated = p.of(NITRIFICATION_SATURATED)
                * Nitrification.temperatureFactor(draft.y[WATER_CELSIUS], p.of(NITRIFICATION_THETA));
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        double ammonia = now.mgPerLitre(y[AMMONIA_G]);
        double nitrite = now.mgPerLitre(y[NITRITE_G]);
        double alkalinity = now.mgPerLitre(y[ALKALINITY_EQ]);
        double supply = limited(y[OXYGEN_MG_PER_LITRE], p.of(NITRIFICATION_HALF_OXYGEN));
        double first = supply
                * limited(alkalinity, p.of(NITRIFICATION_HALF_ALKALINITY))
                * mediaM2PerHour
                * y[AMMONIA_COLONY]
                * Nitrification.arealRate(ammonia, saturated, p.of(NITRIFICATION_CROSSOVER), p.of(AMMONIA_FIRST_ORDER));
        double second = supply
                * mediaM2PerHour
                * y[NITRITE_COLONY]
                * Nitrification.arealRate(nitrite, saturated, p.of(NITRIFICATION_CROSSOVER), p.of(NITRITE_FIRST_ORDER));
        double gas = p.perHour(DENITRIFICATION_PER_DAY) * y[NITRATE_G];
        dy[AMMONIA_G] -= first;
        dy[NITRITE_G] += first - second;
        dy[NITRATE_G] += second - gas;
        dy[NITROGEN_GAS_G] += gas;
        double share = Nitrification.FIRST_STEP_OXYGEN_SHARE;
        now.nitrifyingOxygenGPerHour = Nitrification.OXYGEN_PER_NITROGEN * (share * first + (1 - share) * second);
        dy[ALKALINITY_EQ] += Nitrification.EQUIVALENTS_PER_NITROGEN * (0.5 * gas - first)
                + p.closingByDays(ALKALINITY_RETURN_DAYS)
                        * Math.max(0, p.of(ALKALINITY_MEQ_PER_LITRE) - alkalinity)
                        * now.litres
                        / 1000;
        grow(ammonia, nitrite, y, dy);
    }

    private void grow(double ammonia, double nitrite, double[] y, double[] dy) {
        dy[AMMONIA_COLONY] += p.perHour(AMMONIA_COLONY_PER_DAY)
                * y[AMMONIA_COLONY]
                * (1 - y[AMMONIA_COLONY])
                * limited(ammonia, p.of(COLONY_HALF_CONCENTRATION));
        dy[NITRITE_COLONY] += p.perHour(NITRITE_COLONY_PER_DAY)
                * y[NITRITE_COLONY]
                * (1 - y[NITRITE_COLONY])
                * limited(nitrite, p.of(COLONY_HALF_CONCENTRATION));
    }

    private static double limited(double amount, double half) {
        double here = Math.max(0, amount);
        return here > 0 ? here / (here + half) : 0;
    }
}
