package io.github.weirwise.tank;

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
    /** All water at running level. */
    public double runningLitres() {
        return heldLitres + sumpLitres;
    }
}
