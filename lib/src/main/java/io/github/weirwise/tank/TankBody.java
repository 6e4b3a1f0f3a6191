package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

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
 * @since 0.1
 */
public record TankBody(
        double heldLitres,
        double sumpLitres,
        double sumpCapacityLitres,
        double pumpNeedsLitres,
        double drainDownLitres,
        double surfaceM2,
        double reservoirLitres) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public TankBody {
        String fix = "measure tank and sump again, with the pump running";
        Require.inRange("heldLitres", heldLitres, 10, 1e6, "L", fix);
        Require.inRange("sumpLitres", sumpLitres, 1, 1e6, "L", fix);
        Require.inRange("sumpCapacityLitres", sumpCapacityLitres, sumpLitres, 1e6, "L", fix);
        Require.inRange("pumpNeedsLitres", pumpNeedsLitres, 0, 0.99 * sumpLitres, "L", fix);
        Require.inRange("drainDownLitres", drainDownLitres, 0, Math.min(1e5, heldLitres), "L", fix);
        Require.inRange("surfaceM2", surfaceM2, 0.01, 1e4, "m2", fix);
        Require.inRange("reservoirLitres", reservoirLitres, 0, 1e6, "L", fix);
    }

    /** All water at running level. */
    public double runningLitres() {
        return heldLitres + sumpLitres;
    }
}
