package io.github.weirwise.setup;

/**
 * Water (L) for the first filling, and what to add or take out once all runs. Plain geometry.
 *
 * <p>Before the start the tank stands at its crest, the chamber at the weir, half of the media is covered. Running lifts
 * the tank over its crest, the chamber over its weir, fills the return pipe and about half of the drain, and wets the
 * media; that water comes out of the media side, which should then cover a third of the media.
 *
 * @param tankLitres into the tank
 * @param chamberLitres into the skimmer chamber, up to the weir's crest
 * @param wetLitres into media side and extra sump
 * @param inTransitLitres that running takes out of the media side
 * @param transitDoubtLitres half width of the doubt about it: a drain between empty and full
 * @param addLitres to add once it runs; negative to take out
 * @param levelBeforeMm level over the base before the start
 * @param levelAfterStartMm level over the base once it runs, before anything is added or taken out
 * @param levelRunningMm level over the base wanted in running
 */
public record FirstFilling(
        double tankLitres,
        double chamberLitres,
        double wetLitres,
        double inTransitLitres,
        double transitDoubtLitres,
        double addLitres,
        double levelBeforeMm,
        double levelAfterStartMm,
        double levelRunningMm) {
    /** Computes it for an installation. */
    public static FirstFilling of(Installation installation, ReturnPoint running, WeirStart weir) {
        WetSide wet = new WetSide(installation);
        FilterBody filter = installation.filter();
        double before = filter.levelCoveringMm(FitLimits.FILLING_COVER);
        double halfDrain = 500
                * installation.drainage().pipes()
                * installation.drainage().each().pipe().volumeM3();
        double transit = installation.tank().litresInLayer(running.overflowHeadMm())
                + halfDrain
                + 1000 * installation.returnLine().plumbing().pipe().volumeM3()
                + filter.chamberLitresPerMm() * weir.point().headMm()
                + DrainBack.trickleLitres(filter);
        double left = wet.litresAt(before) - transit;
        return new FirstFilling(
                installation.tank().waterLitres(),
                filter.chamberLitresPerMm() * weir.settings().weirCrestMm(),
                wet.litresAt(before),
                transit,
                halfDrain,
                wet.litresAt(wet.runningLevelMm()) - left,
                before,
                Math.max(filter.wetFloorMm(), wet.levelAt(left)),
                wet.runningLevelMm());
    }

    /** All water in the installation before the start, L. */
    public double totalLitres() {
        return tankLitres + chamberLitres + wetLitres;
    }
}
