package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

/** Foam follows the skimmer's law with a lag and carries water, salt, nitrogen and organics into cup or container. */
final class FoamRates implements Rates {
    private static final double ML_PER_DAY_PER_LITRE_PER_HOUR = 24000;
    private static final double MOST_BEHIND = 4;

    private final SkimmerLaw law;
    private final SkimmerView view;
    private final WasteRoute waste;
    private final boolean skimming;
    private final Pace p;
    private TankDraft draft;

    FoamRates(TankPlan plan, SkimmerLaw law, SkimmerView view) {
        this.law = law;
        this.view = view;
        waste = plan.waste();
        skimming = plan.parameters().runs(TankProcess.SKIMMING);
        p = new Pace(plan);
    }

    @Override
    public void begin(TankDraft draft) {
        this.draft = draft;
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        now.steady = airPasses() ? law.at(view.settings(now, draft, y)) : FoamOutput.NONE;
        double wanted = skimming ? now.steady.skimmateMlPerDay() * (1 - y[FILM_LOST]) : 0;
        boolean follows = p.runs(SETTLING_HOURS) && !now.steady.flooding();
        dy[SKIMMATE_ML_PER_DAY] += 1 / p.of(follows ? SETTLING_HOURS : FLOOD_HOURS) * (wanted - y[SKIMMATE_ML_PER_DAY]);
        dy[FILM_LOST] -= 1 / p.of(FILM_RETURN_HOURS) * y[FILM_LOST];
        dy[OIL] -= p.closing(OIL_HOURS) * y[OIL];
        dy[AGENT] -= p.closingByDays(AGENT_DAYS) * y[AGENT];
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
        dy[NITROGEN_SKIMMED_G] += dissolved + p.of(NITROGEN_IN_ORGANICS) * (skimmable + refractory);
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
