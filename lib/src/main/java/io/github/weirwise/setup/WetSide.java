package io.github.weirwise.setup;

/** Litres against level (mm over the base) in the media side and the extra sump, which stand at one level. */
record WetSide(Installation installation) {
    /** Water kept clear of a rim for slop and salt creep; common practice. */
    static final double FREEBOARD_MM = 20;

    private static final int HALVINGS = 80;

    /** Water up to a level; 0 at the floor. Media take up their solid share. */
    double litresAt(double levelMm) {
        FilterBody body = installation.filter();
        double depthMm = Math.max(0, levelMm - body.wetFloorMm());
        double inMediaMm = Math.max(0, Math.min(body.mediaHeightMm(), levelMm - body.mediaBottomMm()));
        double litres = body.wetLengthMm() * body.wetWidthMm() * depthMm / 1e6
                - body.mediaLengthMm() * body.wetWidthMm() * (1 - body.mediaVoids()) * inMediaMm / 1e6;
        return litres
                + installation
                        .extraSump()
                        .map(sump -> sump.lengthMm() * sump.widthMm() * Math.max(0, levelMm - sump.floorMm()) / 1e6)
                        .orElse(0.0);
    }

    /** Level at which this much water stands, as if the walls had no end. */
    double levelAt(double litres) {
        double low = installation.filter().wetFloorMm() - 100;
        double high = 1e5;
        for (int step = 0; step < HALVINGS; step++) {
            double middle = 0.5 * (low + high);
            if (litresAt(middle) < litres) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** The lowest rim, less a freeboard. */
    double highestLevelMm() {
        double rimMm = installation
                .extraSump()
                .map(sump -> Math.min(sump.rimMm(), installation.filter().rimMm()))
                .orElse(installation.filter().rimMm());
        return rimMm - FREEBOARD_MM;
    }

    /** Level with a third of the media covered: what normal running should not exceed. */
    double runningLevelMm() {
        return installation.filter().levelCoveringMm(FitLimits.RUNNING_COVER);
    }

    /** Room between the running level and the highest level allowed, L. */
    double freeLitres() {
        return litresAt(highestLevelMm()) - litresAt(runningLevelMm());
    }
}
