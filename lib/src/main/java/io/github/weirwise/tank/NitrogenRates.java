package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

/** Ammonia to nitrite to nitrate to gas, with the alkalinity that it costs, and the growth of the colonies. */
final class NitrogenRates implements Rates {
    private static final double HOURS = 24;

    private final TankParameters p;
    private final Biofilter biofilter;
    private final double nitrifying;
    private final double growing;
    private final double crossover;
    private final double ammoniaFirstOrder;
    private final double nitriteFirstOrder;
    private final double halfOxygen;
    private final double halfAlkalinity;
    private final double ammoniaGrowthPerHour;
    private final double nitriteGrowthPerHour;
    private final double halfForGrowth;
    private final double denitrifyPerHour;
    private final double alkalinityTarget;
    private final double alkalinityPerHour;
    private double mediaM2PerHour;
    private double saturated;

    NitrogenRates(TankPlan plan) {
        p = plan.parameters();
        biofilter = plan.biofilter();
        nitrifying = p.runs(TankProcess.NITRIFICATION) ? 1 : 0;
        growing = p.runs(TankProcess.COLONY_GROWTH) ? 1 : 0;
        crossover = p.value(TankParameter.NITRIFICATION_CROSSOVER);
        ammoniaFirstOrder = p.value(TankParameter.AMMONIA_FIRST_ORDER);
        nitriteFirstOrder = p.value(TankParameter.NITRITE_FIRST_ORDER);
        halfOxygen = p.value(TankParameter.NITRIFICATION_HALF_OXYGEN);
        halfAlkalinity = p.value(TankParameter.NITRIFICATION_HALF_ALKALINITY);
        ammoniaGrowthPerHour = growing * p.value(TankParameter.AMMONIA_COLONY_PER_DAY) / HOURS;
        nitriteGrowthPerHour = growing * p.value(TankParameter.NITRITE_COLONY_PER_DAY) / HOURS;
        halfForGrowth = p.value(TankParameter.COLONY_HALF_CONCENTRATION);
        boolean denitrifying = p.runs(TankProcess.DENITRIFICATION);
        denitrifyPerHour = denitrifying ? p.value(TankParameter.DENITRIFICATION_PER_DAY) / HOURS : 0;
        alkalinityTarget = p.value(TankParameter.ALKALINITY_MEQ_PER_LITRE);
        boolean dosing = p.runs(TankProcess.ALKALINITY_DOSING);
        alkalinityPerHour = dosing ? 1 / (HOURS * p.value(TankParameter.ALKALINITY_RETURN_DAYS)) : 0;
    }

    @Override
    public void begin(TankDraft draft) {
        double drowned = biofilter.drownedShare();
        double wet = 1 - drowned + drowned * p.value(TankParameter.DROWNED_MEDIA_WORTH);
        double worth = draft.flowing() ? wet : p.value(TankParameter.STOPPED_MEDIA_WORTH);
        mediaM2PerHour = nitrifying * worth * biofilter.mediaM2() / HOURS;
        saturated = p.value(TankParameter.NITRIFICATION_SATURATED)
                * Nitrification.temperatureFactor(draft.y[WATER_CELSIUS], p.value(TankParameter.NITRIFICATION_THETA));
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        double ammonia = now.mgPerLitre(y[AMMONIA_G]);
        double nitrite = now.mgPerLitre(y[NITRITE_G]);
        double alkalinity = now.mgPerLitre(y[ALKALINITY_EQ]);
        double supply = limited(y[OXYGEN_MG_PER_LITRE], halfOxygen);
        double first = supply
                * limited(alkalinity, halfAlkalinity)
                * mediaM2PerHour
                * y[AMMONIA_COLONY]
                * Nitrification.arealRate(ammonia, saturated, crossover, ammoniaFirstOrder);
        double second = supply
                * mediaM2PerHour
                * y[NITRITE_COLONY]
                * Nitrification.arealRate(nitrite, saturated, crossover, nitriteFirstOrder);
        double gas = denitrifyPerHour * y[NITRATE_G];
        dy[AMMONIA_G] -= first;
        dy[NITRITE_G] += first - second;
        dy[NITRATE_G] += second - gas;
        dy[NITROGEN_GAS_G] += gas;
        double share = Nitrification.FIRST_STEP_OXYGEN_SHARE;
        now.nitrifyingOxygenGPerHour = Nitrification.OXYGEN_PER_NITROGEN * (share * first + (1 - share) * second);
        dy[ALKALINITY_EQ] += Nitrification.EQUIVALENTS_PER_NITROGEN * (0.5 * gas - first)
                + alkalinityPerHour * Math.max(0, alkalinityTarget - alkalinity) * now.litres / 1000;
        grow(ammonia, nitrite, y, dy);
    }

    private void grow(double ammonia, double nitrite, double[] y, double[] dy) {
        dy[AMMONIA_COLONY] +=
                ammoniaGrowthPerHour * y[AMMONIA_COLONY] * (1 - y[AMMONIA_COLONY]) * limited(ammonia, halfForGrowth);
        dy[NITRITE_COLONY] +=
                nitriteGrowthPerHour * y[NITRITE_COLONY] * (1 - y[NITRITE_COLONY]) * limited(nitrite, halfForGrowth);
    }

    private static double limited(double amount, double half) {
        double here = Math.max(0, amount);
        return here > 0 ? here / (here + half) : 0;
    }
}
