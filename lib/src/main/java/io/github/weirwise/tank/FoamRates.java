package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

/** Foam follows the skimmer's law with a lag and carries water, salt, nitrogen and organics into cup or container. */
final class FoamRates implements Rates {
    private static final double ML_PER_DAY_PER_LITRE_PER_HOUR = 24000;
    private static final double MOST_BEHIND = 4;

    private final SkimmerLaw law;
    private final SkimmerView view;
    private final WasteRoute waste;
    private final boolean skimming;
    private final double settlePerHour;
    private final double floodPerHour;
    private final double filmPerHour;
    private final double oilPerHour;
    private final double agentPerHour;
    private final double nitrogenInOrganics;
    private TankDraft draft;

    FoamRates(TankPlan plan, SkimmerLaw law, SkimmerView view) {
        this.law = law;
        this.view = view;
        waste = plan.waste();
        TankParameters p = plan.parameters();
        skimming = p.runs(TankProcess.SKIMMING);
        floodPerHour = 1 / p.value(TankParameter.FLOOD_HOURS);
        settlePerHour = p.runs(TankProcess.FOAM_LAG) ? 1 / p.value(TankParameter.SETTLING_HOURS) : floodPerHour;
        filmPerHour = 1 / p.value(TankParameter.FILM_RETURN_HOURS);
        boolean fading = p.runs(TankProcess.FADING);
        oilPerHour = fading ? 1 / p.value(TankParameter.OIL_HOURS) : 0;
        agentPerHour = fading ? 1 / (24 * p.value(TankParameter.AGENT_DAYS)) : 0;
        nitrogenInOrganics = p.value(TankParameter.NITROGEN_IN_ORGANICS);
    }

    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        now.steady = airPasses() ? law.at(view.settings(now, draft, y)) : FoamOutput.NONE;
        double wanted = skimming ? now.steady.skimmateMlPerDay() * (1 - y[FILM_LOST]) : 0;
        double pace = now.steady.flooding() ? floodPerHour : settlePerHour;
        dy[SKIMMATE_ML_PER_DAY] += pace * (wanted - y[SKIMMATE_ML_PER_DAY]);
        dy[FILM_LOST] -= filmPerHour * y[FILM_LOST];
        dy[OIL] -= oilPerHour * y[OIL];
        dy[AGENT] -= agentPerHour * y[AGENT];
        now.skimmateLitresPerHour = skimming && !draft.is(CUP_FULL)
                ? now.drawableShare * Math.max(0, y[SKIMMATE_ML_PER_DAY]) / ML_PER_DAY_PER_LITRE_PER_HOUR
                : 0;
        if (now.skimmateLitresPerHour > 0) {
            carry(now, y, dy);
        }
    }

    private boolean airPasses() {
        boolean shut = draft.is(CONTAINER_FULL) && waste.cutOff();
        return draft.is(INJECTOR_ON)
                && draft.powered()
                && !draft.is(AIR_LINE_IN_WATER)
                && !shut
                && draft.y[AIR_LITRES_PER_HOUR] > 0;
    }

    private void carry(Moment now, double[] y, double[] dy) {
        double litres = now.skimmateLitresPerHour;
        double share = litres / now.litres;
        double skimmable = y[SKIMMABLE_G] > 0 ? litres * strengthMgPerLitre(now, y) / 1000 : 0;
        double refractory = share * y[REFRACTORY_G];
        double dissolved = share * (y[AMMONIA_G] + y[NITRITE_G] + y[NITRATE_G]);
        dy[SKIMMABLE_G] -= skimmable;
        dy[REFRACTORY_G] -= refractory;
        dy[AMMONIA_G] -= share * y[AMMONIA_G];
        dy[NITRITE_G] -= share * y[NITRITE_G];
        dy[NITRATE_G] -= share * y[NITRATE_G];
        dy[ALKALINITY_EQ] -= share * y[ALKALINITY_EQ];
        dy[WATER_KG] -= share * y[WATER_KG];
        dy[SALT_KG] -= share * y[SALT_KG];
        dy[WATER_SKIMMED_KG] += share * y[WATER_KG];
        dy[SALT_SKIMMED_KG] += share * y[SALT_KG];
        dy[ORGANICS_SKIMMED_G] += skimmable + refractory;
        dy[NITROGEN_SKIMMED_G] += dissolved + nitrogenInOrganics * (skimmable + refractory);
        collect(1000 * litres, skimmable + refractory, dy);
    }

    /**
     * Organics in what comes now. Colour goes with the amount, not at once with the weir: foam that gives less than it will is
     * stronger by the power -1/2 of its amount (drainage at the lip, Stevenson 2007, n = 2), within a factor that is assumed.
     */
    private double strengthMgPerLitre(Moment now, double[] y) {
        double water = now.mgPerLitre(y[SKIMMABLE_G]);
        double settledMgPerLitre = Math.max(0, now.steady.strengthMgPerLitre() - water);
        double settled = now.steady.skimmateMlPerDay();
        double comes = y[SKIMMATE_ML_PER_DAY];
        double behind = settled > 0 && comes > 0 ? Math.sqrt(settled / comes) : 1;
        return water + settledMgPerLitre * Math.max(1 / MOST_BEHIND, Math.min(MOST_BEHIND, behind));
    }

    private void collect(double mlPerHour, double organicsGPerHour, double[] dy) {
        dy[SKIMMATE_ML] += mlPerHour;
        if (draft.is(CONTAINER_FULL)) {
            dy[SPILLED_LITRES] += mlPerHour / 1000;
            return;
        }
        dy[waste.drained() ? CONTAINER_ML : CUP_ML] += mlPerHour;
        dy[COLLECTED_G] += organicsGPerHour;
    }
}
