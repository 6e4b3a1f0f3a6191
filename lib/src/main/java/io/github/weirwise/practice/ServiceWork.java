package io.github.weirwise.practice;

import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;

/** What the service of a part does to the installation; a sound part is served in vain. */
record ServiceWork(Bench bench, Part part) {
    private static final double USUAL_MEDIA_UNDER_WATER = 0.3;
    private static final double SALTIEST = 42;
    /** A day's change of a tenth of the water, at most this much saltier in all: slowly, for the animals' sake. */
    private static final double SALT_STEP = 1.2;

    private static final double CHANGED_SHARE = 0.1;
    private static final int MOST_DAYS = 20;

    Bench done() {
        double now = bench.hours();
        return switch (part) {
            case AIR_LINE ->
                bench.withEvents(
                        List.of(new TankEvent.AirLine(now, false), new TankEvent.Serviced(now, TankPart.AIR_LINE)));
            case INJECTOR_PUMP -> served(TankPart.INJECTOR_PUMP);
            case INJECTOR_NOZZLE -> served(TankPart.NOZZLE);
            case NECK_AND_CUP -> washed();
            case CUP_VENT -> bench.withEvents(List.of(new TankEvent.CupPressure(now, 0)));
            case WEIR_PLATE ->
                bench.withEvents(List.of(
                        new TankEvent.WeirSlipped(now, -bench.tank().controls().weirSlipMm())));
            case FILTER_PAD -> served(TankPart.PAD);
            case RETURN_PUMP -> served(TankPart.STRAINER);
            case SALT_MIX -> bench.withEvents(saltUp());
            case SUMP_LEVEL -> lifted();
            case SEATING, WATER_SURFACE, RETURN_WATER, ADDITIVES -> bench;
        };
    }

    private Bench served(TankPart tankPart) {
        return bench.withEvents(List.of(new TankEvent.Serviced(bench.hours(), tankPart)));
    }

    private Bench washed() {
        Bench empty = bench.emptied();
        return new ServiceWork(empty, part).served(TankPart.NECK);
    }

    /** Media under water are lifted out; the plan of the room changes, not the water. */
    private Bench lifted() {
        TankPlan plan = bench.plan();
        double share = Math.min(USUAL_MEDIA_UNDER_WATER, plan.biofilter().drownedShare());
        return bench.withPlan(plan.withBiofilter(plan.biofilter().withDrownedShare(share)));
    }

    /** A tenth of the water a day against saltier water, until the salinity is back. */
    private List<TankEvent> saltUp() {
        List<TankEvent> changes = new ArrayList<>();
        double salinity = bench.tank().water().practicalSalinity();
        double litres = CHANGED_SHARE * bench.plan().body().runningLitres();
        for (int day = 0; day < MOST_DAYS && salinity < PartTrouble.SALT_WANTED - 0.1; day++) {
            double step = Math.min(SALT_STEP, PartTrouble.SALT_WANTED - salinity);
            double mixed = Math.min(SALTIEST, salinity + step / CHANGED_SHARE);
            changes.add(new TankEvent.WaterChanged(bench.hours() + 24 * day, litres, mixed));
            salinity += CHANGED_SHARE * (mixed - salinity);
        }
        return changes;
    }
}
