package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * How far salt keeps bubbles from merging (share, 0 to 1), and the bubble diameter (m) that follows, by practical
 * salinity: S^3/(S^3 + 6^3), an assumed smooth step.
 *
 * <p>Known: sodium chloride halves merging near 0.078 mol/L (Craig, Ninham &amp; Pashley 1993, Nature 364:317, from
 * memory), which by ionic strength is a salinity of 3.9; clouds of large bubbles treble from fresh water to 20 and are
 * greatest at 12 to 25 (Anguelova &amp; Huq 2017, J. Mar. Sci. Eng. 5:1). The step is put at 6, in between, and is 0.94
 * complete at 15. Its exact shape is not known.
 */
public final class Coalescence {
    /** Salinity at which half of the effect is there; assumed. */
    public static final double HALF_SALINITY = 6;
    /** Salinities within which the sources place the step. */
    public static final Range STEP_SALINITY = new Range(3.9, 20);

    private Coalescence() {}

    /**
     * Share of merging that salt prevents, 0 in fresh water to nearly 1 at sea.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double inhibition(double practicalSalinity) {
        Require.inRange("practicalSalinity", practicalSalinity, 0, 150, "", "give the practical salinity");
        double ratio = practicalSalinity / HALF_SALINITY;
        double cube = ratio * ratio * ratio;
        return cube / (1 + cube);
    }

    /**
     * Sauter mean diameter that an injector makes at a salinity, m, between what it makes in fresh water and at full
     * inhibition; geometric, because merging multiplies volumes. From memory and unverified: fine injectors make 2-4 mm in
     * fresh, 0.5-1.0 mm in sea water.
     *
     * @param freshDiameterM diameter in fresh water, from the other to 0.05 m
     * @param saltDiameterM diameter with merging fully inhibited, 1e-5 to 0.05 m
     * @param practicalSalinity PSS-78, 0 to 150
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double diameter(double freshDiameterM, double saltDiameterM, double practicalSalinity) {
        Require.inRange("saltDiameterM", saltDiameterM, 1e-5, 0.05, "m", "give the bubbles' diameter at sea in metres");
        Require.inRange(
                "freshDiameterM", freshDiameterM, saltDiameterM, 0.05, "m", "salt does not make bubbles larger");
        return freshDiameterM * Math.pow(saltDiameterM / freshDiameterM, inhibition(practicalSalinity));
    }
}
