package io.github.weirwise.tank;

/**
 * Published limits for ammonia and nitrite, in milligrams of nitrogen per litre. They warn; they do not replace a
 * veterinarian or the needs of a species.
 */
public enum ToxicityLimit {
    /** US EPA 1989, saltwater, EPA 440/5-88-004: one-hour mean 0.233 mg NH3/L (number from memory). */
    UNIONISED_ACUTE(0.233 * ToxicityLimit.NITROGEN_IN_AMMONIA),
    /** US EPA 1989, saltwater, EPA 440/5-88-004: four-day mean 0.035 mg NH3/L (number from memory). */
    UNIONISED_CHRONIC(0.035 * ToxicityLimit.NITROGEN_IN_AMMONIA),
    /** Guideline of aquaculture texts, 0.0125 to 0.02 mg NH3-N/L; the upper end (from memory, Timmons &amp; Ebeling). */
    UNIONISED_GUIDELINE(0.02),
    /** Guideline for marine systems, 0.5 to 1 mg/L; the lower end; chloride protects (from memory, Timmons &amp; Ebeling). */
    NITRITE_GUIDELINE(0.5);

    /** Grams of nitrogen in a gram of NH3, 14.0067/17.0305. */
    static final double NITROGEN_IN_AMMONIA = 14.0067 / 17.0305;

    private final double mgNitrogenPerLitre;

    ToxicityLimit(double mgNitrogenPerLitre) {
        this.mgNitrogenPerLitre = mgNitrogenPerLitre;
    }

    /** The limit, milligrams of nitrogen per litre. */
    public double mgNitrogenPerLitre() {
        return mgNitrogenPerLitre;
    }
}
