package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * Where the nitrogen of feed goes: grams of nitrogen, from dry feed and its share of protein.
 *
 * <p>Timmons &amp; Ebeling, Recirculating Aquaculture (from memory): protein is 16 % nitrogen, 80 % of it is assimilated,
 * 80 % of that excreted, 90 % of the excretion is ammonia; the product is the 0.092 of their rule. The rest is read off
 * the same split: what is not excreted stays in the animals, the other excretion and the faeces are organic.
 */
public final class FeedWaste {
    /** Nitrogen in protein. */
    public static final double NITROGEN_IN_PROTEIN = 0.16;
    /** Grams of ammonia nitrogen for each gram of protein fed, as the texts round it (0.16 x 0.80 x 0.80 x 0.90). */
    public static final double AMMONIA_PER_PROTEIN = 0.092;
    /** Share of the nitrogen fed that is excreted as ammonia. */
    public static final double AMMONIA_SHARE = AMMONIA_PER_PROTEIN / NITROGEN_IN_PROTEIN;
    /** Share of the nitrogen fed that stays in the animals, 0.80 x 0.20. */
    public static final double RETAINED_SHARE = 0.16;
    /** Share of the nitrogen fed that leaves the animals as organic matter. */
    public static final double ORGANIC_SHARE = 1 - AMMONIA_SHARE - RETAINED_SHARE;

    private FeedWaste() {}

    /**
     * All nitrogen in feed.
     *
     * @param feedGrams dry feed, 0 to 1e6 g
     * @param proteinShare 0 to 1
     * @return g N
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double nitrogenG(double feedGrams, double proteinShare) {
        Require.inRange("feedGrams", feedGrams, 0, 1e6, "g", "give the dry feed of one meal");
        Require.inRange("proteinShare", proteinShare, 0, 1, "", "the label says crude protein; 0.45 is usual");
        return NITROGEN_IN_PROTEIN * proteinShare * feedGrams;
    }
}
