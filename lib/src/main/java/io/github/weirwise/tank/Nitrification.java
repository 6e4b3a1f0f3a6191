package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * What nitrifying bacteria turn over on wet media: grams of nitrogen per square metre and day, and what each gram costs in
 * oxygen and alkalinity.
 *
 * <p>Kinetics of a biofilm: proportional to the concentration while the water film limits (Kinyage et al.), to its square
 * root while the biofilm is partly penetrated, constant once it is saturated (Nijhof &amp; Bovendeur 1990, Aquaculture
 * 87:133). Rates are stated at 24 C; other temperatures by theta^(t - 24).
 *
 * @since 0.1
 */
public final class Nitrification {
    private static final double NITROGEN = 14.0067;
    private static final double OXYGEN_MOLECULE = 31.9988;
    private static final double CALCIUM_CARBONATE = 100.0869;

    /** g O2 for each g of ammonium nitrogen that becomes nitrate, without growth: 2 mol O2 per mol N. */
    public static final double OXYGEN_PER_NITROGEN = 2 * OXYGEN_MOLECULE / NITROGEN;
    /** g CaCO3 of alkalinity used for each g of ammonium nitrogen, without growth: 2 eq per mol N. */
    public static final double ALKALINITY_PER_NITROGEN = CALCIUM_CARBONATE / NITROGEN;
    /** As above with growth, 1.83 mol O2: Ebeling, Timmons &amp; Bisogni 2006, Aquaculture 257:346 (prints 4.18). */
    public static final double OXYGEN_PER_NITROGEN_WITH_GROWTH = 1.83 * OXYGEN_MOLECULE / NITROGEN;
    /** As above with growth, 1.97 mol HCO3-: Ebeling, Timmons &amp; Bisogni 2006 (prints 7.05). */
    public static final double ALKALINITY_PER_NITROGEN_WITH_GROWTH = 1.97 / 2 * CALCIUM_CARBONATE / NITROGEN;
    /** g of nitrate ion for each g of nitrogen, 62.0049/14.0067. */
    public static final double NITRATE_PER_NITROGEN = 62.0049 / NITROGEN;
    /** Equivalents of alkalinity used for each g of ammonium nitrogen. */
    static final double EQUIVALENTS_PER_NITROGEN = 2 / NITROGEN;
    /** Share of the oxygen that the first step (to nitrite, 1.5 of 2 mol) takes. */
    static final double FIRST_STEP_OXYGEN_SHARE = 0.75;

    /** Greatest rate in sea water at 24 C, g N/(m2 day): Nijhof &amp; Bovendeur 1990 (read in the abstract). */
    public static final double SATURATED_IN_SEA_WATER = 0.28;
    /** Greatest rate in fresh water at 24 C, g N/(m2 day): Nijhof &amp; Bovendeur 1990 (read in the abstract). */
    public static final double SATURATED_IN_FRESH_WATER = 0.69;
    /** First-order rate of ammonia, m/day: Kinyage et al., fresh water (read). */
    public static final double FIRST_ORDER_AMMONIA = 0.22;
    /** First-order rate of nitrite, m/day: Kinyage et al., fresh water (read). */
    public static final double FIRST_ORDER_NITRITE = 0.23;

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
     * Greatest rate between fresh and sea water, g N/(m2 day) at 24 C: straight between the two measured ends, constant
     * past salinity 35 (the line between them is assumed).
     *
     * @param practicalSalinity 0 to 45
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double saturatedRate(double practicalSalinity) {
        Require.inRange("practicalSalinity", practicalSalinity, 0, 45, "", "give practical salinity");
        double sea = Math.min(1, practicalSalinity / 35);
        return SATURATED_IN_FRESH_WATER + sea * (SATURATED_IN_SEA_WATER - SATURATED_IN_FRESH_WATER);
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
