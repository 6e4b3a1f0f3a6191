package io.github.weirwise.tank;

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
