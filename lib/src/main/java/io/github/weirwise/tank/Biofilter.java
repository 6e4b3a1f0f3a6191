package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The wet-dry side beyond the weir: pad, drip plate and media. Heights are over the floor of the skimmer chamber.
 *
 * @param mediaM2 surface of the media, 0 to 1e6 m2
 * @param drownedShare share of the media under water while running, 0 to 1; at most a third by common practice
 * @param padM2 area of the filter pad, 0.001 to 100 m2
 * @param padLevelMm height of the pad, on which water stands when it clogs, -1000 to 2000 mm
 * @param bypassLevelMm height at which water runs past a clogged pad, at least {@code padLevelMm}
 */
public record Biofilter(double mediaM2, double drownedShare, double padM2, double padLevelMm, double bypassLevelMm) {
    private static final String TRY = "tank.try.lookAtTheBiofilter";

    private static final Limit MEDIA_M2 = Limit.of("mediaM2", 0, 1e6, Unit.PLAIN, TRY);
    private static final Limit DROWNED_SHARE = Limit.of("drownedShare", 0, 1, Unit.PLAIN, TRY);
    private static final Limit PAD_M2 = Limit.of("padM2", 0.001, 100, Unit.PLAIN, TRY);
    private static final Limit PAD_LEVEL_MM = Limit.of("padLevelMm", -1000, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit BYPASS_LEVEL_MM = Limit.of("bypassLevelMm", -1000, 2000, Unit.MILLIMETRE, TRY);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Biofilter {
        MEDIA_M2.check(mediaM2);
        DROWNED_SHARE.check(drownedShare);
        PAD_M2.check(padM2);
        PAD_LEVEL_MM.check(padLevelMm);
        BYPASS_LEVEL_MM.checkFrom(bypassLevelMm, padLevelMm);
    }

    /** The same with another share of the media under water. */
    public Biofilter withDrownedShare(double share) {
        return new Biofilter(mediaM2, share, padM2, padLevelMm, bypassLevelMm);
    }

    /**
     * Water level on this side, from a pad's share closed: a clean pad's water grows as open area shrinks (assumed), to the
     * bypass at most.
     *
     * @param padClog share of the pad that is closed, 0 to 1
     * @param flowShare flow against the rated flow
     * @param cleanHeadMm water standing on a clean pad at rated flow
     */
    double levelMm(double padClog, double flowShare, double cleanHeadMm) {
        double open = Math.max(1e-6, 1 - padClog);
        return Math.min(bypassLevelMm, padLevelMm + cleanHeadMm * flowShare / (open * open));
    }
}
