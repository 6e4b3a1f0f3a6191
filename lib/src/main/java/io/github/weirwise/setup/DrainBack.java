package io.github.weirwise.setup;

import io.github.weirwise.internal.physics.hydraulics.Drain;

/**
 * How much water (L) runs down when the power goes, and whether filter and sump hold it. Plain geometry on levels from
 * the weir formulas.
 *
 * <p>The pipes count full, although a quiet drain is not: an upper bound. A check valve does not count.
 *
 * @param tankLitres from the tank, down to the crest or to the siphon-break hole if that lies lower
 * @param pipeLitres from drain and return pipes
 * @param chamberLitres from the skimmer chamber, down to the weir's crest
 * @param trickleLitres from pad and media
 * @param blockedHoleLitres more from the tank when the siphon-break hole is blocked
 * @param freeLitres room over the running level, up to a freeboard under the lowest rim
 * @param levelAfterMm level over the base afterwards, if nothing spills
 */
public record DrainBack(
        double tankLitres,
        double pipeLitres,
        double chamberLitres,
        double trickleLitres,
        double blockedHoleLitres,
        double freeLitres,
        double levelAfterMm) {
    /** Computes it for a running installation. */
    public static DrainBack of(Installation installation, ReturnPoint running, WeirStart weir) {
        ReturnLine line = installation.returnLine();
        double tank = fromTankLitres(installation, running, line.breakBelowCrestMm());
        double blocked = fromTankLitres(installation, running, line.mouthBelowCrestMm());
        double pipes = 1000
                        * installation.drainage().pipes()
                        * installation.drainage().each().pipe().volumeM3()
                + 1000 * line.plumbing().pipe().volumeM3();
        double chamber =
                installation.filter().chamberLitresPerMm() * weir.point().headMm();
        double trickle = trickleLitres(installation.filter());
        WetSide wet = new WetSide(installation);
        double down = tank + pipes + chamber + trickle;
        return new DrainBack(
                tank,
                pipes,
                chamber,
                trickle,
                Math.max(0, blocked - tank),
                wet.freeLitres(),
                wet.levelAt(wet.litresAt(wet.runningLevelMm()) + down));
    }

    /** All that comes down with the siphon-break hole open, L. */
    public double totalLitres() {
        return tankLitres + pipeLitres + chamberLitres + trickleLitres;
    }

    /** All that comes down with the hole blocked, L. */
    public double worstLitres() {
        return totalLitres() + blockedHoleLitres;
    }

    /** What does not fit, L: this ends on the floor. */
    public double spilledLitres() {
        return Math.max(0, totalLitres() - freeLitres);
    }

    /** Room that is missing for the drain-back with its margin, L. */
    public double missingLitres() {
        return Math.max(0, FitLimits.DRAIN_BACK_MARGIN * totalLitres() - freeLitres);
    }

    /** Water held by the media that a running level of a third leaves dry. */
    static double trickleLitres(FilterBody filter) {
        return FitLimits.TRICKLE_SHARE
                * (1 - FitLimits.RUNNING_COVER)
                * filter.mediaLengthMm()
                * filter.wetWidthMm()
                * filter.mediaHeightMm()
                / 1e6;
    }

    private static double fromTankLitres(Installation installation, ReturnPoint running, double openBelowCrestMm) {
        DisplayTank tank = installation.tank();
        return 1000
                * Drain.backflowVolume(
                        tank.lengthMm() * tank.widthMm() / 1e6,
                        running.overflowHeadMm() / 1000,
                        0,
                        -openBelowCrestMm / 1000,
                        0);
    }
}
