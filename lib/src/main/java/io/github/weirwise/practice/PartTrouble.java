package io.github.weirwise.practice;

import io.github.weirwise.tank.TankParameter;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;

/**
 * How far a part is from sound, 0 (as it should be) to 1 (as bad as it gets), as a person who looks would judge it: what it does in
 * this tank against what its row in {@link Part} says of its worst.
 */
record PartTrouble(Bench bench) {
    /** Salinity that is wanted: sea water. */
    static final double SALT_WANTED = 35;

    private static final double PASCAL_PER_MM = 10;
    /** A pad that is more than half closed looks dirty before water stands on it; stated judgement. */
    private static final double PAD_LOOKS_CLEAN = 0.55;

    private static final double MEDIA_AT_MOST = 0.35;

    double of(Part part) {
        TankState tank = bench.tank();
        double size = switch (part) {
            case AIR_LINE ->
                tank.controls().airLineInWater() ? 1 : lost(part, tank.parts().airLineCreep());
            case INJECTOR_PUMP -> lost(part, tank.parts().pumpWear());
            case INJECTOR_NOZZLE -> lost(part, tank.parts().nozzleScale());
            case RETURN_PUMP -> lost(part, strainerLoss() * tank.parts().strainerClog());
            case CUP_VENT -> against(part, tank.controls().backPressurePa() / PASCAL_PER_MM);
            case WEIR_PLATE -> against(part, Math.abs(tank.controls().weirSlipMm()));
            case FILTER_PAD ->
                Math.max(against(part, backedUpMm()), tank.parts().padClog() - PAD_LOOKS_CLEAN);
            case SALT_MIX -> (SALT_WANTED - tank.water().practicalSalinity()) / Part.WORST_SALINITY_LOSS;
            case NECK_AND_CUP -> tank.parts().neckFilm();
            case WATER_SURFACE -> tank.foam().oil();
            case ADDITIVES -> tank.foam().agent();
            case SUMP_LEVEL -> 2 * (bench.plan().biofilter().drownedShare() - MEDIA_AT_MOST);
            // Nothing in the tank loosens these.
            case SEATING, RETURN_WATER -> 0;
        };
        return Math.max(0, Math.min(1, size));
    }

    private static double against(Part part, double effect) {
        return effect / part.worst().main();
    }

    private static double lost(Part part, double share) {
        return against(part, -Math.log1p(-Math.min(share, 1)));
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
}
