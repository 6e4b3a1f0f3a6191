package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * What nitrifying bacteria turn over on wet media: grams of nitrogen per square metre and day, and what each gram costs in
 * oxygen and alkalinity.
 *
 * <p>Kinetics of a biofilm: proportional to the concentration while the water film limits (Kinyage et al.), to its square
 * root while the biofilm is partly penetrated, constant once it is saturated (Nijhof &amp; Bovendeur 1990, Aquaculture
 * 87:133). Rates are stated at 24 C; other temperatures by theta^(t - 24).
 */
public final class Nitrification {
    private static final double NITROGEN = 14.0067;
    private static final double OXYGEN_MOLECULE = 31.9988;
    /** g O2 for each g of ammonium nitrogen that becomes nitrate, without growth: 2 mol O2 per mol N. */
    public static final double OXYGEN_PER_NITROGEN = 2 * OXYGEN_MOLECULE / NITROGEN;
    /** Equivalents of alkalinity used for each g of ammonium nitrogen. */
    static final double EQUIVALENTS_PER_NITROGEN = 2 / NITROGEN;
    /** Share of the oxygen that the first step (to nitrite, 1.5 of 2 mol) takes. */
    static final double FIRST_STEP_OXYGEN_SHARE = 0.75;

    private Nitrification() {}

    /**
     * Areal rate of a biofilm: the least of first order, half order and saturated rate.
     *
     * @param mgNitrogenPerLitre concentration beside the film, 0 or more
     * @param saturated greatest rate r0, g N/(m2 day), above 0
     * @param crossoverMgPerLitre concentration C* at which half order meets it, above 0: the half-order constant is
     *     r0/sqrt(C*)
     * @param firstOrderMPerDay limit of the water film, m/day, above 0
     * @return g N/(m2 day)
     */
    public static double arealRate(
            double mgNitrogenPerLitre, double saturated, double crossoverMgPerLitre, double firstOrderMPerDay) {
        double c = Math.max(0, mgNitrogenPerLitre);
        double halfOrder = saturated * Math.sqrt(c / crossoverMgPerLitre);
        return Math.min(firstOrderMPerDay * c, Math.min(halfOrder, saturated));
    }

    /**
     * Temperature factor theta^(t - 24).
     *
     * @param celsius 0 to 45 C
     * @param theta 1.00 to 1.15; 1.03 to 1.06 for biofilms, 1.08 to 1.10 for suspended growth (from memory, Metcalf &amp;
     *     Eddy; Zhu &amp; Chen 2002)
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double temperatureFactor(double celsius, double theta) {
        Require.inRange("celsius", celsius, 0, 45, "\u00b0C", "give the water temperature");
        Require.inRange("theta", theta, 1, 1.15, "", "take 1.05 for a biofilm");
        return Math.pow(theta, celsius - 24);
    }

    /**
     * Share of the bacteria's work that survives an abrupt change of salinity: exp(-|change|/6.5). Kinyage et al. (read)
     * saw about a tenth left after a step of 15 and nothing after 25 to 35; the exponential between is assumed.
     *
     * @param salinityChange sudden change of practical salinity, either sign
     */
    public static double survivingSalinityShock(double salinityChange) {
        return Math.exp(-Math.abs(salinityChange) / 6.5);
    }
}
