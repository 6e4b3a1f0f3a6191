package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankDraft.*;

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
        dy[SKIMMATE] += pace * (wanted - y[SKIMMATE]);
        dy[FILM_LOST] -= filmPerHour * y[FILM_LOST];
        dy[OIL] -= oilPerHour * y[OIL];
        dy[AGENT] -= agentPerHour * y[AGENT];
        now.skimmateLitresPerHour = skimming && !draft.cupFull
                ? now.drawableShare * Math.max(0, y[SKIMMATE]) / ML_PER_DAY_PER_LITRE_PER_HOUR
                : 0;
        if (now.skimmateLitresPerHour > 0) {
            carry(now, y, dy);
        }
    }

    private boolean airPasses() {
        boolean shut = draft.containerFull && waste.cutOff();
        return draft.injectorOn && draft.powered() && !draft.airLineInWater && !shut && draft.airLitresPerHour > 0;
    }

    private void carry(Moment now, double[] y, double[] dy) {
        double litres = now.skimmateLitresPerHour;
        double share = litres / now.litres;
        double skimmable = y[SKIMMABLE] > 0 ? litres * strengthMgPerLitre(now, y) / 1000 : 0;
        double refractory = share * y[REFRACTORY];
        double dissolved = share * (y[AMMONIA] + y[NITRITE] + y[NITRATE]);
        dy[SKIMMABLE] -= skimmable;
        dy[REFRACTORY] -= refractory;
        dy[AMMONIA] -= share * y[AMMONIA];
        dy[NITRITE] -= share * y[NITRITE];
        dy[NITRATE] -= share * y[NITRATE];
        dy[ALKALINITY] -= share * y[ALKALINITY];
        dy[WATER] -= share * y[WATER];
        dy[SALT] -= share * y[SALT];
        dy[WATER_SKIMMED] += share * y[WATER];
        dy[SALT_SKIMMED] += share * y[SALT];
        dy[ORGANICS_SKIMMED] += skimmable + refractory;
        dy[NITROGEN_SKIMMED] += dissolved + nitrogenInOrganics * (skimmable + refractory);
        collect(1000 * litres, skimmable + refractory, dy);
    }

    /**
     * Organics in what comes now. Colour goes with the amount, not at once with the weir: foam that gives less than it will is
     * stronger by the power -1/2 of its amount (drainage at the lip, Stevenson 2007, n = 2), within a factor that is assumed.
     */
    private double strengthMgPerLitre(Moment now, double[] y) {
        double water = now.mgPerLitre(y[SKIMMABLE]);
        double settledMgPerLitre = Math.max(0, now.steady.strengthMgPerLitre() - water);
        double settled = now.steady.skimmateMlPerDay();
        double comes = y[SKIMMATE];
        double behind = settled > 0 && comes > 0 ? Math.sqrt(settled / comes) : 1;
        return water + settledMgPerLitre * Math.max(1 / MOST_BEHIND, Math.min(MOST_BEHIND, behind));
    }

    private void collect(double mlPerHour, double organicsGPerHour, double[] dy) {
        dy[SKIMMATE_ML] += mlPerHour;
        if (draft.containerFull) {
            dy[SPILLED] += mlPerHour / 1000;
            return;
        }
        dy[waste.drained() ? CONTAINER : CUP] += mlPerHour;
        dy[COLLECTED] += organicsGPerHour;
    }
}
