package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * Discharge (m3/s) over a thin-plate weir as wide as its channel, by four other published formulas (Rehbock 1929,
 * White 1977, Ackers et al. 1978, Francis 1855), to see how far the authors differ; {@link RectangularWeir} is the one to use.
 *
 * <p>At 20 mm of head they differ by 8 %, at 10 mm by 15 %. All throw
 * {@link io.github.weirwise.report.OutOfRangeException} for a width or crest height outside 0.001 to 100 m or a head
 * outside 0 to 100 m.
 *
 * @since 0.1
 */
public final class FullWidthWeir {
    /** Heads for which Rehbock's formula is published, m; from memory. */
    public static final Range REHBOCK_HEAD_M = new Range(0.03, 0.75);
    /** Heads for which the formula of Ackers et al. is published, m; the lowest of any. */
    public static final Range ACKERS_HEAD_M = new Range(0.02, 1.0);
    /** Heads for which Francis' formula is published, m; from memory. */
    public static final Range FRANCIS_HEAD_M = new Range(0.06, 1.0);

    private static final double GRAVITY = 9.80665;

    private FullWidthWeir() {}

    /**
     * Discharge, m3/s, by Rehbock 1929: (0.602 + 0.083 h/p) (2/3) sqrt(2 g) b (h + 0.0012)^1.5.
     *
     * @param widthM b, 0.001 to 100 m
     * @param crestHeightM p, 0.001 to 100 m
     * @param headM h, 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double rehbock(double widthM, double crestHeightM, double headM) {
        require(widthM, crestHeightM, headM);
        double share = 0.602 + 0.083 * headM / crestHeightM;
        return headM == 0 ? 0 : share * 2 / 3 * Math.sqrt(2 * GRAVITY) * widthM * Math.pow(headM + 0.0012, 1.5);
    }

    /**
     * Discharge, m3/s, by Ackers, White, Perkins &amp; Harrison 1978 (as in Blevins 1984): 0.564 (1 + 0.150 h/p) b sqrt(g) (h + 0.001)^1.5.
     *
     * @param widthM b, 0.001 to 100 m
     * @param crestHeightM p, 0.001 to 100 m
     * @param headM h, 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double ackers(double widthM, double crestHeightM, double headM) {
        require(widthM, crestHeightM, headM);
        double share = 0.564 * (1 + 0.150 * headM / crestHeightM);
        return headM == 0 ? 0 : share * widthM * Math.sqrt(GRAVITY) * Math.pow(headM + 0.001, 1.5);
    }

    /**
     * Discharge, m3/s, by White 1977 (Fluid Mechanics): 0.562 (1 + 0.153 h/p) b sqrt(g) (h + 0.001)^1.5.
     *
     * @param widthM b, 0.001 to 100 m
     * @param crestHeightM p, 0.001 to 100 m
     * @param headM h, 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double white(double widthM, double crestHeightM, double headM) {
        require(widthM, crestHeightM, headM);
        double share = 0.562 * (1 + 0.153 * headM / crestHeightM);
        return headM == 0 ? 0 : share * widthM * Math.sqrt(GRAVITY) * Math.pow(headM + 0.001, 1.5);
    }

    /**
     * Discharge, m3/s, by Francis 1855: 1.84 b h^1.5, without end contractions and without a small-head term, so it is lowest at small heads.
     *
     * @param widthM b, 0.001 to 100 m
     * @param headM h, 0 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double francis(double widthM, double headM) {
        require(widthM, 1, headM);
        return 1.84 * widthM * Math.pow(headM, 1.5);
    }

    private static void require(double width, double crest, double head) {
        Require.inRange("widthM", width, 0.001, 100, "m", "give the width of the overflow crest in metres");
        Require.inRange("crestHeightM", crest, 0.001, 100, "m", "give the crest's height above the channel floor");
        Require.inRange("headM", head, 0, 100, "m", "give the head over the crest in metres");
    }
}
