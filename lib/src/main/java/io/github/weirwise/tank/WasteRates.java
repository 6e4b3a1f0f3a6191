package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

/** Digestion of food, decay of solids and of dissolved organics, and the pad's catch. */
final class WasteRates implements Rates {
    private final double digestPerHour;
    private final double nitrogenInOrganics;
    private final double solidShare;
    private final double skimmableShare;
    private final double solidsPerHour;
    private final double mineralisedShare;
    private final double skimmablePerHour;
    private final double toRefractory;
    private final double refractoryPerHour;
    private final double padCatch;
    private final double clogPerGram;

    WasteRates(TankPlan plan) {
        TankParameters p = plan.parameters();
        boolean decay = p.runs(TankProcess.DECAY);
        digestPerHour = p.runs(TankProcess.DIGESTION) ? 1 / p.value(TankParameter.DIGESTION_HOURS) : 0;
        nitrogenInOrganics = p.value(TankParameter.NITROGEN_IN_ORGANICS);
        solidShare = p.value(TankParameter.SOLID_SHARE_OF_WASTE);
        skimmableShare = p.value(TankParameter.SKIMMABLE_SHARE_OF_DISSOLVED);
        solidsPerHour = decay ? p.value(TankParameter.SOLIDS_DECAY_PER_DAY) / 24 : 0;
        mineralisedShare = p.value(TankParameter.SOLIDS_MINERALISED_SHARE);
        skimmablePerHour = decay ? p.value(TankParameter.SKIMMABLE_DECAY_PER_DAY) / 24 : 0;
        toRefractory = p.value(TankParameter.SKIMMABLE_TO_REFRACTORY_SHARE);
        refractoryPerHour = decay ? p.value(TankParameter.REFRACTORY_DECAY_PER_DAY) / 24 : 0;
        padCatch = p.runs(TankProcess.PAD_FILTRATION) ? p.value(TankParameter.PAD_CATCH_SHARE) : 0;
        boolean clogging = p.runs(TankProcess.PAD_CLOGGING);
        clogPerGram = clogging
                ? p.value(TankParameter.PAD_PER_GRAM) / plan.biofilter().padM2()
                : 0;
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
        dissolve((1 - mineralisedShare) * fromSolids, dy);
        double gone = skimmablePerHour * y[SKIMMABLE_G];
        double slow = refractoryPerHour * y[REFRACTORY_G];
        dy[SKIMMABLE_G] -= gone;
        dy[REFRACTORY_G] += toRefractory * gone - slow;
        now.mineralisedGPerHour = mineralisedShare * fromSolids + (1 - toRefractory) * gone + slow;
        dy[AMMONIA_G] += nitrogenInOrganics * now.mineralisedGPerHour;
        dy[ORGANICS_MINERALISED_G] += now.mineralisedGPerHour;
    }

    private void digest(double[] y, double[] dy) {
        double nitrogen = digestPerHour * y[DIGESTING_G];
        double organics = FeedWaste.ORGANIC_SHARE * nitrogen / nitrogenInOrganics;
        dy[DIGESTING_G] -= nitrogen;
        dy[AMMONIA_G] += FeedWaste.AMMONIA_SHARE * nitrogen;
        dy[NITROGEN_RETAINED_G] += FeedWaste.RETAINED_SHARE * nitrogen;
        dy[ORGANICS_IN_G] += organics;
        dy[SOLIDS_G] += solidShare * organics;
        dissolve((1 - solidShare) * organics, dy);
    }

    private void dissolve(double grams, double[] dy) {
        dy[SKIMMABLE_G] += skimmableShare * grams;
        dy[REFRACTORY_G] += (1 - skimmableShare) * grams;
    }

    private void catchSolids(Moment now, double[] y, double[] dy) {
        double open = Math.max(0, Math.min(1, 1 - y[PAD_CLOG]));
        double caught = padCatch * now.flowLitresPerHour / now.litres * open * Math.max(0, y[SOLIDS_G]);
        dy[SOLIDS_G] -= caught;
        dy[PAD_SOLIDS_G] += caught;
        dy[PAD_CLOG] += clogPerGram * caught * open;
    }

    private double rot(int where, double[] y, double[] dy) {
        double gone = solidsPerHour * y[where];
        dy[where] -= gone;
        return gone;
    }
}
