package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

import io.github.weirwise.internal.physics.seawater.Seawater;

/** Oxygen from surface, trickle and bubbles, used by animals, decay and nitrification. */
final class OxygenRates implements Rates {
    private static final double MG_PER_UMOL = 31.998e-3;
    /** Below this, mg/L, animals and bacteria cannot draw their full demand. */
    private static final double SCARCE = 0.3;

    private final Pace p;
    private final double surfaceM2;
    private final double feedGramsPerDay;
    private double saturation;

    OxygenRates(TankPlan plan) {
        p = new Pace(plan);
        surfaceM2 = plan.body().surfaceM2();
        feedGramsPerDay = plan.feeding().gramsPerDay();
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
        if (!p.runs(SURFACE_OXYGEN_M_PER_HOUR)) {
            return;
        }
        double exchanged = 1000 * p.of(SURFACE_OXYGEN_M_PER_HOUR) * surfaceM2
                + p.of(TRICKLE_OXYGEN_SHARE) * now.flowLitresPerHour
                + p.of(SKIMMER_OXYGEN_SHARE) * now.steady.airLitresPerHour();
        double perHour = exchanged / now.litres;
        double here = Math.max(0, y[OXYGEN_MG_PER_LITRE]);
        double grams = p.of(OXYGEN_PER_FEED) * feedGramsPerDay / 24
                + p.of(OXYGEN_PER_ORGANICS) * now.mineralisedGPerHour
                + now.nitrifyingOxygenGPerHour;
        double demand = now.mgPerLitre(grams) * here / (here + SCARCE);
        double slowed = Math.min(1, p.of(OXYGEN_FASTEST_PER_HOUR) / perHour);
        dy[OXYGEN_MG_PER_LITRE] += slowed * (perHour * (saturation - y[OXYGEN_MG_PER_LITRE]) - demand);
    }
}
