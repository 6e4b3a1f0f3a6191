package io.github.weirwise.practice;

import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;

/**
 * How far a part is from sound, 0 (as it should be) to 1 (as bad as it gets), as a person who looks would judge it. The full
 * sizes are our own, near those of the diagnosis' table of causes.
 */
record PartTrouble(Bench bench) {
    private static final double AIR_LINE_FULL = 0.65;
    private static final double PUMP_FULL = 0.5;
    private static final double NOZZLE_FULL = 0.4;
    private static final double STRAINER_FULL = 0.6;
    private static final double PRESSURE_FULL_PA = 130;
    private static final double DROWNED_FULL_MM = 24;
    private static final double OIL_FULL = 0.6;
    private static final double AGENT_FULL = 1.5;
    private static final double MEDIA_AT_MOST = 0.35;
    private static final double SALT_WANTED = 35;

    double of(Part part) {
        TankState tank = bench.tank();
        double size = switch (part) {
            case AIR_LINE -> tank.controls().airLineInWater() ? 1 : tank.parts().airLineCreep() / AIR_LINE_FULL;
            case INJECTOR_PUMP -> tank.parts().pumpWear() / PUMP_FULL;
            case INJECTOR_NOZZLE -> tank.parts().nozzleScale() / NOZZLE_FULL;
            case NECK_AND_CUP -> tank.parts().neckFilm();
            case CUP_VENT -> tank.controls().backPressurePa() / PRESSURE_FULL_PA;
            case WEIR_PLATE -> Math.abs(tank.controls().weirSlipMm()) / 12;
            case FILTER_PAD ->
                Math.max(drownedMm() / DROWNED_FULL_MM, tank.parts().padClog() - 0.55);
            case RETURN_PUMP -> tank.parts().strainerClog() / STRAINER_FULL;
            case WATER_SURFACE -> tank.foam().oil() / OIL_FULL;
            case ADDITIVES -> tank.foam().agent() / AGENT_FULL;
            case SALT_MIX -> (SALT_WANTED - tank.water().practicalSalinity()) / 18;
            case SUMP_LEVEL -> 2 * (bench.plan().biofilter().drownedShare() - MEDIA_AT_MOST);
            case SEATING, RETURN_WATER -> 0;
        };
        return Math.max(0, Math.min(1, size));
    }

    private double drownedMm() {
        Settings settings = bench.settings();
        return settings.condition().levelBeyondWeirMm()
                - settings.weirCrestMm()
                - settings.condition().weirSlipMm();
    }
}
