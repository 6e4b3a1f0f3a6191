package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

/** What service, dirt and a restart do to the parts of a tank. */
final class PartEffects {
    /** Share of the colony that stays on media cleaned a part at a time in tank water; assumed. */
    private static final double COLONY_KEPT = 0.85;

    private final TankPlan plan;
    private final double nitrogenInOrganics;
    private final double surgeMl;

    PartEffects(TankPlan plan) {
        this.plan = plan;
        TankParameters p = plan.parameters();
        nitrogenInOrganics = p.value(TankParameter.NITROGEN_IN_ORGANICS);
        surgeMl = p.value(TankParameter.RESTART_SURGE_ML);
    }

    void service(TankDraft draft, TankPart part) {
        double[] y = draft.y;
        switch (part) {
            case NECK -> wash(draft);
            case CUP -> emptyCup(draft);
            case CONTAINER -> emptyContainer(draft);
            case AIR_LINE -> y[AIR_LINE_CREEP] = 0;
            case NOZZLE -> y[NOZZLE_SCALE] = 0;
            case INJECTOR_PUMP -> y[PUMP_WEAR] = 0;
            case PAD -> {
                takeOut(draft, PAD_SOLIDS_G, 1);
                y[PAD_CLOG] = 0;
            }
            case STRAINER -> y[STRAINER_CLOG] = 0;
            case MEDIA -> {
                y[AMMONIA_COLONY] *= COLONY_KEPT;
                y[NITRITE_COLONY] *= COLONY_KEPT;
            }
            case RESERVOIR -> fillReservoir(draft, 0);
        }
    }

    void foul(TankDraft draft, TankPart part, double share) {
        double[] y = draft.y;
        switch (part) {
            case NECK -> y[NECK_FILM] = share;
            case CUP -> {
                y[CUP_ML] = share * plan.unit().cupMl();
                y[CUP_FULL] = 0;
            }
            case CONTAINER -> {
                y[CONTAINER_ML] = share * 1000 * plan.waste().containerLitres();
                y[CONTAINER_FULL] = 0;
            }
            case AIR_LINE -> y[AIR_LINE_CREEP] = share;
            case NOZZLE -> y[NOZZLE_SCALE] = share;
            case INJECTOR_PUMP -> y[PUMP_WEAR] = share;
            case PAD -> y[PAD_CLOG] = share;
            case STRAINER -> y[STRAINER_CLOG] = share;
            case MEDIA -> {
                y[AMMONIA_COLONY] = 1 - share;
                y[NITRITE_COLONY] = 1 - share;
            }
            case RESERVOIR -> {
                y[RESERVOIR_LITRES] = (1 - share) * plan.body().reservoirLitres();
                y[RESERVOIR_EMPTY] = 0;
            }
        }
    }

    void takeOut(TankDraft draft, int solids, double share) {
        double gone = share * draft.y[solids];
        draft.y[solids] -= gone;
        draft.y[ORGANICS_OUT_G] += gone;
        draft.y[NITROGEN_OUT_G] += nitrogenInOrganics * gone;
    }

    void fillReservoir(TankDraft draft, double salinity) {
        draft.y[RESERVOIR_LITRES] = plan.body().reservoirLitres();
        draft.y[RESERVOIR_SALINITY] = salinity;
        draft.y[RESERVOIR_EMPTY] = 0;
    }

    private void wash(TankDraft draft) {
        emptyCup(draft);
        draft.y[NECK_FILM] = 0;
        draft.y[FILM_LOST] = 1;
        draft.y[SKIMMATE_ML_PER_DAY] = 0;
    }

    private void emptyCup(TankDraft draft) {
        forget(draft, CUP_ML);
        draft.y[CUP_FULL] = 0;
    }

    private void emptyContainer(TankDraft draft) {
        forget(draft, CONTAINER_ML);
        draft.y[CONTAINER_FULL] = 0;
    }

    private static void forget(TankDraft draft, int vessel) {
        double[] y = draft.y;
        double all = y[CUP_ML] + y[CONTAINER_ML];
        y[COLLECTED_G] *= all > 0 ? 1 - y[vessel] / all : 0;
        y[vessel] = 0;
    }

    /** Wet foam of the tank's own strength is pushed over the lip. */
    void surge(TankDraft draft) {
        boolean drained = plan.waste().drained();
        double room = drained
                ? 1000 * plan.waste().containerLitres() - draft.y[CONTAINER_ML]
                : plan.unit().cupMl() - draft.y[CUP_ML];
        double ml = Math.min(surgeMl, 0.5 * Math.max(0, room));
        double share = ml / 1000 / draft.litres();
        double[] y = draft.y;
        double organics = TankDraft.leave(share, TankDraft.Way.FOAM, nitrogenInOrganics, y, y);
        y[SKIMMATE_ML] += ml;
        y[drained ? CONTAINER_ML : CUP_ML] += ml;
        y[COLLECTED_G] += organics;
    }
}
