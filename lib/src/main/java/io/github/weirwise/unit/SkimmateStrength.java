package io.github.weirwise.unit;

import io.github.weirwise.internal.physics.colour.DissolvedColour;
import io.github.weirwise.internal.physics.colour.PlatinumCobalt;
import io.github.weirwise.internal.physics.foam.Adsorption;

/**
 * What the skimmate carries: the liquid's own organics plus what the bubbles' surface brought to the lip, and how dark
 * that looks in a 20 mm white vial.
 *
 * <p>C_skimmate = C + (6/d) Gamma(C) Ql/W, with Langmuir coverage Gamma lowered by the few seconds that a bubble has to
 * collect it. Coverage, half-saturation and colour per gram are from memory or assumed and vary widely between waters.
 *
 * @since 0.1
 */
public final class SkimmateStrength {
    /** Full coverage 2 mg/m2 (1.5 to 3), half of it at 5 mg/L (1 to 50 mg/L); from memory. */
    static final Adsorption ADSORPTION = new Adsorption(2e-6, 1 / 0.005);
    /**
     * Share of the equilibrium coverage that a bubble brings to the lip; assumed, and more than a lone bubble can gather in the
     * column: transport ({@link io.github.weirwise.internal.physics.foam.BubbleUptake}) allows 0.06 to 0.1 in the default units for a large protein
     * in dilute water. Kept because darkness is what is matched, and that is the product of this share and
     * {@link #ABSORPTION_M2_PER_G}; {@link OperatingPoint} warns that the organics carried out may be as many times less, and the
     * command {@code sensitivity} prints what hangs on it.
     */
    public static final double COLLECTED_SHARE = 0.5;
    /** Napierian absorption at 440 nm per mass of organics, m2/g; assumed. */
    public static final double ABSORPTION_M2_PER_G = 0.4;

    /** Drier than this it is sludge and no longer a liquid, mg/L; assumed. */
    private static final double MOST_MG_PER_LITRE = 20000;

    /** There and back through the vial. */
    private static final double VIAL_PATH_M = 0.040;

    private static final double DARKEST_PT_CO = 100000;

    private SkimmateStrength() {}

    /**
     * Organics in the skimmate, mg/L; the water's own where no foam arrives.
     *
     * @param traits whose bubbles at the lip
     * @param skimmableMgPerLitre organics in the water, 0 to 500 mg/L
     * @param point what the steady law answers
     * @throws io.github.weirwise.report.OutOfRangeException if the water holds less than nothing
     */
    public static double mgPerLitre(FoamTraits traits, double skimmableMgPerLitre, SteadyPoint point) {
        if (!(point.skimmateM3PerS() > 0) || point.lipLiquidFraction() <= 0) {
            return skimmableMgPerLitre;
        }
        return mgPerLitre(traits, skimmableMgPerLitre, point.gasPerSkimmate());
    }

    /**
     * Organics in the skimmate, mg/L.
     *
     * @param traits whose bubbles at the lip
     * @param skimmableMgPerLitre organics in the water, 0 to 500 mg/L
     * @param gasPerLiquid volume of gas that leaves over the lip per volume of liquid, 0 or more
     * @throws io.github.weirwise.report.OutOfRangeException if the water holds less than nothing
     */
    public static double mgPerLitre(FoamTraits traits, double skimmableMgPerLitre, double gasPerLiquid) {
        double coverage = COLLECTED_SHARE * ADSORPTION.load(skimmableMgPerLitre / 1000);
        double areaPerGas = 6 / (traits.lipBubbleMm() / 1000);
        return Math.min(MOST_MG_PER_LITRE, skimmableMgPerLitre + 1000 * areaPerGas * coverage * gasPerLiquid);
    }

    /**
     * Colour of a darkness in a 20 mm white vial, as packed sRGB without alpha: daylight goes through to the white wall and back, so
     * it passes 40 mm. Real skimmate is turbid too and looks duller.
     *
     * @param ptCo platinum-cobalt units, 0 to 100000; taken at the limit beyond, never throws
     */
    public static int packedColour(double ptCo) {
        double shown = Math.max(0, Math.min(DARKEST_PT_CO, ptCo));
        return DissolvedColour.ofPlatinumCobalt(shown)
                .colourThrough(VIAL_PATH_M)
                .packed();
    }

    /**
     * Darkness in platinum-cobalt units, 0 or more.
     *
     * @param strengthMgPerLitre organics, 0 to 250000 mg/L; no skimmate here is stronger than 20000
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double darknessPtCo(double strengthMgPerLitre) {
        return Math.max(0, PlatinumCobalt.fromAbsorption(ABSORPTION_M2_PER_G * strengthMgPerLitre));
    }
}
