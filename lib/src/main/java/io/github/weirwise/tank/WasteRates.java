package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;
import static io.github.weirwise.tank.TankParameter.*;

/** Digestion of food, decay of solids and of dissolved organics, and the pad's catch. */
final class WasteRates implements Rates {
    private final Pace p;
    private final double padM2;

    WasteRates(TankPlan plan) {
        p = new Pace(plan);
        padM2 = plan.biofilter().padM2();
    }

    @Override
    public void begin(TankDraft draft) {
        // Nothing here depends on settings.
    }

    @Override
    public void add(Moment now, double[] y, double[] dy) {
        digest(y, dy);
        catchSolids(now, y, dy);
        double fromSolids = rot(SOLIDS_G, y, dy) + rot(PAD_SOLIDS_G, y, dy);
        dissolve((1 - p.of(SOLIDS_MINERALISED_SHARE)) * fromSolids, dy);
        double gone = p.perHour(SKIMMABLE_DECAY_PER_DAY) * y[SKIMMABLE_G];
        double slow = p.perHour(REFRACTORY_DECAY_PER_DAY) * y[REFRACTORY_G];
        dy[SKIMMABLE_G] -= gone;
        dy[REFRACTORY_G] += p.of(SKIMMABLE_TO_REFRACTORY_SHARE) * gone - slow;
        now.mineralisedGPerHour =
                p.of(SOLIDS_MINERALISED_SHARE) * fromSolids + (1 - p.of(SKIMMABLE_TO_REFRACTORY_SHARE)) * gone + slow;
        dy[AMMONIA_G] += p.of(NITROGEN_IN_ORGANICS) * now.mineralisedGPerHour;
        dy[ORGANICS_MINERALISED_G] += now.mineralisedGPerHour;
    }

    private void digest(double[] y, double[] dy) {
        double nitrogen = p.closing(DIGESTION_HOURS) * y[DIGESTING_G];
        double organics = FeedWaste.ORGANIC_SHARE * nitrogen / p.of(NITROGEN_IN_ORGANICS);
        dy[DIGESTING_G] -= nitrogen;
        dy[AMMONIA_G] += FeedWaste.AMMONIA_SHARE * nitrogen;
        dy[NITROGEN_RETAINED_G] += FeedWaste.RETAINED_SHARE * nitrogen;
        dy[ORGANICS_IN_G] += organics;
        dy[SOLIDS_G] += p.of(SOLID_SHARE_OF_WASTE) * organics;
        dissolve((1 - p.of(SOLID_SHARE_OF_WASTE)) * organics, dy);
    }

    private void dissolve(double grams, double[] dy) {
        dy[SKIMMABLE_G] += p.of(SKIMMABLE_SHARE_OF_DISSOLVED) * grams;
        dy[REFRACTORY_G] += (1 - p.of(SKIMMABLE_SHARE_OF_DISSOLVED)) * grams;
    }

    private void catchSolids(Moment now, double[] y, double[] dy) {
        double open = Math.max(0, Math.min(1, 1 - y[PAD_CLOG]));
        double caught =
                p.running(PAD_CATCH_SHARE) * now.flowLitresPerHour / now.litres * open * Math.max(0, y[SOLIDS_G]);
        dy[SOLIDS_G] -= caught;
        dy[PAD_SOLIDS_G] += caught;
        dy[PAD_CLOG] += p.running(PAD_PER_GRAM) / padM2 * caught * open;
    }

    private double rot(int where, double[] y, double[] dy) {
        double gone = p.perHour(SOLIDS_DECAY_PER_DAY) * y[where];
        dy[where] -= gone;
        return gone;
    }
}
