package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankDraft.*;

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
            case AIR_LINE -> y[AIR_LINE] = 0;
            case NOZZLE -> y[NOZZLE] = 0;
            case INJECTOR_PUMP -> y[WEAR] = 0;
            case PAD -> {
                takeOut(draft, PAD_SOLIDS, 1);
                y[PAD] = 0;
            }
            case STRAINER -> y[STRAINER] = 0;
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
            case NECK -> y[NECK] = share;
            case CUP -> y[CUP] = share * plan.unit().cupMl();
            case CONTAINER -> y[CONTAINER] = share * 1000 * plan.waste().containerLitres();
            case AIR_LINE -> y[AIR_LINE] = share;
            case NOZZLE -> y[NOZZLE] = share;
            case INJECTOR_PUMP -> y[WEAR] = share;
            case PAD -> y[PAD] = share;
            case STRAINER -> y[STRAINER] = share;
            case MEDIA -> {
                y[AMMONIA_COLONY] = 1 - share;
                y[NITRITE_COLONY] = 1 - share;
            }
            case RESERVOIR -> {
                y[RESERVOIR] = (1 - share) * plan.body().reservoirLitres();
                draft.reservoirEmpty = y[RESERVOIR] <= 0;
            }
        }
    }

    void takeOut(TankDraft draft, int solids, double share) {
        double gone = share * draft.y[solids];
        draft.y[solids] -= gone;
        draft.y[ORGANICS_OUT] += gone;
        draft.y[NITROGEN_OUT] += nitrogenInOrganics * gone;
    }

    void fillReservoir(TankDraft draft, double salinity) {
        draft.y[RESERVOIR] = plan.body().reservoirLitres();
        draft.reservoirSalinity = salinity;
        draft.reservoirEmpty = false;
    }

    private void wash(TankDraft draft) {
        emptyCup(draft);
        draft.y[NECK] = 0;
        draft.y[FILM_LOST] = 1;
        draft.y[SKIMMATE] = 0;
    }

    private void emptyCup(TankDraft draft) {
        forget(draft, CUP);
        draft.cupFull = false;
    }

    private void emptyContainer(TankDraft draft) {
        forget(draft, CONTAINER);
        draft.containerFull = false;
    }

    private static void forget(TankDraft draft, int vessel) {
        double[] y = draft.y;
        double all = y[CUP] + y[CONTAINER];
        y[COLLECTED] *= all > 0 ? 1 - y[vessel] / all : 0;
        y[vessel] = 0;
    }

    /** Wet foam of the tank's own strength is pushed over the lip. */
    void surge(TankDraft draft) {
        boolean drained = plan.waste().drained();
        double room = drained
                ? 1000 * plan.waste().containerLitres() - draft.y[CONTAINER]
                : plan.unit().cupMl() - draft.y[CUP];
        double ml = Math.min(surgeMl, 0.5 * Math.max(0, room));
        double share = ml / 1000 / draft.litres();
        double[] y = draft.y;
        double organics = share * (y[SKIMMABLE] + y[REFRACTORY]);
        y[WATER_SKIMMED] += share * y[WATER];
        y[SALT_SKIMMED] += share * y[SALT];
        y[ORGANICS_SKIMMED] += organics;
        y[NITROGEN_SKIMMED] += share * (y[AMMONIA] + y[NITRITE] + y[NITRATE]) + nitrogenInOrganics * organics;
        carryOff(share, y, y);
        y[SKIMMATE_ML] += ml;
        y[drained ? CONTAINER : CUP] += ml;
        y[COLLECTED] += organics;
    }
}
