package io.github.weirwise.practice;

import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * A part in the virtual tank: how far it is from sound, 0 (as it should be) to 1 (as bad as it gets), as a person who looks would
 * judge it, which is what it does in this tank against what its row in {@link Part} says of its worst; and what its service does.
 */
record PartInTank(Bench bench, Part part) {
    /** Salinity that is wanted: sea water. */
    static final double SALT_WANTED = 35;

    private static final double PASCAL_PER_MM = 10;
    /** A pad that is more than half closed looks dirty before water stands on it; stated judgement. */
    private static final double PAD_LOOKS_CLEAN = 0.55;

    private static final double MEDIA_AT_MOST = 0.35;

    private static final double USUAL_MEDIA_UNDER_WATER = 0.3;

    private static final double SALTIEST = 42;

    /** A day's change of a tenth of the water, at most this much saltier in all: slowly, for the animals' sake. */
    private static final double SALT_STEP = 1.2;

    private static final double CHANGED_SHARE = 0.1;

    private static final int MOST_DAYS = 20;

    /** Its size. */
    double size() {
        TankState tank = bench.tank();
        double size = switch (part) {
            case AIR_LINE -> tank.is(Stock.AIR_LINE_IN_WATER) ? 1 : lost(tank.of(Stock.AIR_LINE_CREEP));
            case INJECTOR_PUMP -> lost(tank.of(Stock.PUMP_WEAR));
            case INJECTOR_NOZZLE -> lost(tank.of(Stock.NOZZLE_SCALE));
            case RETURN_PUMP -> lost(strainerLoss() * tank.of(Stock.STRAINER_CLOG));
            case CUP_VENT -> against(tank.of(Stock.BACK_PRESSURE_PA) / PASCAL_PER_MM);
            case WEIR_PLATE -> against(Math.abs(tank.of(Stock.WEIR_SLIP_MM)));
            case FILTER_PAD -> Math.max(against(backedUpMm()), tank.of(Stock.PAD_CLOG) - PAD_LOOKS_CLEAN);
            case SALT_MIX -> (SALT_WANTED - tank.practicalSalinity()) / Part.WORST_SALINITY_LOSS;
            case NECK_AND_CUP -> tank.of(Stock.NECK_FILM);
            case WATER_SURFACE -> tank.of(Stock.OIL);
            case ADDITIVES -> tank.of(Stock.AGENT);
            case SUMP_LEVEL -> 2 * (bench.plan().biofilter().drownedShare() - MEDIA_AT_MOST);
            // Nothing in the tank loosens these.
            case SEATING, RETURN_WATER -> 0;
        };
        return Math.max(0, Math.min(1, size));
    }

    private double against(double effect) {
        return effect / part.worst().main();
    }

    private double lost(double share) {
        return against(-Math.log1p(-Math.min(share, 1)));
    }

    private double strainerLoss() {
        return bench.plan().parameters().value(TankParameter.STRAINER_WORST_LOSS);
    }

    /** By how much the water beyond the weir lifts the water before it. */
    private double backedUpMm() {
        Settings settings = bench.settings();
        Settings free = settings.withCondition(settings.condition().withLevelBeyondWeirMm(0));
        return bench.point().headMm()
                - OperatingPoint.of(bench.plan().unit(), free).headMm();
    }

    /** The bench with the part served; a sound part is served in vain. */
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
                bench.withEvents(
                        List.of(new TankEvent.WeirSlipped(now, -bench.tank().of(Stock.WEIR_SLIP_MM))));
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
        return new PartInTank(empty, part).served(TankPart.NECK);
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
        double salinity = bench.tank().practicalSalinity();
        double litres = CHANGED_SHARE * bench.plan().body().runningLitres();
        for (int day = 0; day < MOST_DAYS && salinity < SALT_WANTED - 0.1; day++) {
            double step = Math.min(SALT_STEP, SALT_WANTED - salinity);
            double mixed = Math.min(SALTIEST, salinity + step / CHANGED_SHARE);
            changes.add(new TankEvent.WaterChanged(bench.hours() + 24 * day, litres, mixed));
            salinity += CHANGED_SHARE * (mixed - salinity);
        }
        return changes;
    }
}
