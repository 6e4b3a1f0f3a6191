package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The water of an installation, in litres at running level.
 *
 * @param heldLitres all water above the sump while the return pump runs: display, skimmer chamber, pipes; 10 to 1e6 L
 * @param sumpLitres water in the sump at the float's level while running, 1 to 1e6 L
 * @param sumpCapacityLitres what the sump holds before it runs over, at least {@code sumpLitres}
 * @param pumpNeedsLitres water in the sump below which the return pump draws air, 0 to below {@code sumpLitres}
 * @param drainDownLitres water that comes down when the return pump stops, 0 to 1e5 L
 * @param surfaceM2 open water surface of the whole installation, 0.01 to 1e4 m2
 * @param reservoirLitres what the top-off reservoir holds, 0 to 1e6 L
 */
public record TankBody(
        double heldLitres,
        double sumpLitres,
        double sumpCapacityLitres,
        double pumpNeedsLitres,
        double drainDownLitres,
        double surfaceM2,
        double reservoirLitres) {
    private static final String TRY = "tank.try.measureTankAndSump";

    private static final Limit HELD_LITRES = Limit.of("heldLitres", 10, 1e6, Unit.LITRE, TRY);
    private static final Limit SUMP_LITRES = Limit.of("sumpLitres", 1, 1e6, Unit.LITRE, TRY);
    private static final Limit SUMP_CAPACITY_LITRES = Limit.of("sumpCapacityLitres", 1, 1e6, Unit.LITRE, TRY);
    private static final Limit PUMP_NEEDS_LITRES = Limit.of("pumpNeedsLitres", 0, 1e6, Unit.LITRE, TRY);
    private static final Limit DRAIN_DOWN_LITRES = Limit.of("drainDownLitres", 0, 1e5, Unit.LITRE, TRY);
    private static final Limit SURFACE_M2 = Limit.of("surfaceM2", 0.01, 1e4, Unit.PLAIN, TRY);
    private static final Limit RESERVOIR_LITRES = Limit.of("reservoirLitres", 0, 1e6, Unit.LITRE, TRY);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public TankBody {
        HELD_LITRES.check(heldLitres);
        SUMP_LITRES.check(sumpLitres);
        SUMP_CAPACITY_LITRES.checkFrom(sumpCapacityLitres, sumpLitres);
        PUMP_NEEDS_LITRES.checkTo(pumpNeedsLitres, 0.99 * sumpLitres);
        DRAIN_DOWN_LITRES.checkTo(drainDownLitres, Math.min(1e5, heldLitres));
        SURFACE_M2.check(surfaceM2);
        RESERVOIR_LITRES.check(reservoirLitres);
    }

    /** All water at running level. */
    public double runningLitres() {
        return heldLitres + sumpLitres;
    }
}
