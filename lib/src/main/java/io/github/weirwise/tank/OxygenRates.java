package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import io.github.weirwise.internal.physics.seawater.Seawater;

/** Oxygen from surface, trickle and bubbles, used by animals, decay and nitrification. */
final class OxygenRates implements Rates {
    private static final double MG_PER_UMOL = 31.998e-3;
    /** Below this, mg/L, animals and bacteria cannot draw their full demand. */
    private static final double SCARCE = 0.3;

    private final boolean on;
    private final double surfaceLitresPerHour;
    private final double trickleShare;
    private final double bubbleShare;
    private final double animalsGPerHour;
    private final double perOrganics;
    private final double fastest;
    private double saturation;

    OxygenRates(TankPlan plan) {
        TankParameters p = plan.parameters();
        on = p.runs(TankProcess.OXYGEN);
        surfaceLitresPerHour = 1000
                * p.value(TankParameter.SURFACE_OXYGEN_M_PER_HOUR)
                * plan.body().surfaceM2();
        trickleShare = p.value(TankParameter.TRICKLE_OXYGEN_SHARE);
        bubbleShare = p.value(TankParameter.SKIMMER_OXYGEN_SHARE);
        animalsGPerHour =
                p.value(TankParameter.OXYGEN_PER_FEED) * plan.feeding().gramsPerDay() / 24;
        perOrganics = p.value(TankParameter.OXYGEN_PER_ORGANICS);
        fastest = p.value(TankParameter.OXYGEN_FASTEST_PER_HOUR);
    }

    @Override
    public void begin(TankDraft draft) {
        double salinity = draft.practicalSalinity();
        double kgPerLitre = Seawater.density(salinity, draft.y[WATER_CELSIUS]) / 1000;
        saturation = MG_PER_UMOL * kgPerLitre * Seawater.oxygenSolubility(salinity, draft.y[WATER_CELSIUS]);
    }

    /** Exchange faster than the integrator's steps is followed to the same balance with a lag. */
    @Override
    public void add(Moment now, double[] y, double[] dy) {
        if (!on) {
            return;
        }
        double exchanged = surfaceLitresPerHour
                + trickleShare * now.flowLitresPerHour
                + bubbleShare * now.steady.airLitresPerHour();
        double perHour = exchanged / now.litres;
        double here = Math.max(0, y[OXYGEN_MG_PER_LITRE]);
        double grams = animalsGPerHour + perOrganics * now.mineralisedGPerHour + now.nitrifyingOxygenGPerHour;
        double demand = now.mgPerLitre(grams) * here / (here + SCARCE);
        double slowed = Math.min(1, fastest / perHour);
        dy[OXYGEN_MG_PER_LITRE] += slowed * (perHour * (saturation - y[OXYGEN_MG_PER_LITRE]) - demand);
    }
}
