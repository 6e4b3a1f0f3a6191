package io.github.weirwise.internal.physics.colour;

import io.github.weirwise.report.Require;

/**
 * Colour on the platinum-cobalt scale (Hazen; ASTM D1209, ISO 6271, ISO 7887) from the absorption at 440 nm (1/m, base
 * e), and back: Cuthbert &amp; del Giorgio 1992, Limnology and Oceanography 37:1319, PtCo = 18.216 a440 - 0.209 (from
 * memory; the absorbances in ASTM D1209 give a slope of 17.5).
 *
 * <p>The regression was made on lake waters, of 0.1 to 15 1/m (rough); beyond, it is carried on in a straight line,
 * as absorption is proportional to concentration. Matches the absorption at 440 nm, not the whole spectrum.
 */
public final class PlatinumCobalt {

    private static final double SLOPE = 18.216;
    private static final double OFFSET = 0.209;
    private static final double GREATEST_ABSORPTION = 1e5;

    private PlatinumCobalt() {}

    /**
     * Platinum-cobalt units of water with a given absorption; 0 for absorptions under 0.0115 1/m, where the regression
     * would be negative.
     *
     * @param absorption440PerM absorption at 440 nm, base e, 0 to 1e5 1/m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double fromAbsorption(double absorption440PerM) {
        Require.inRange(
                "absorption440PerM", absorption440PerM, 0, GREATEST_ABSORPTION, "1/m", "give a base-e absorption");
        return Math.max(0, SLOPE * absorption440PerM - OFFSET);
    }

    /**
     * Absorption at 440 nm, 1/m base e, of water with a given colour.
     *
     * @param platinumCobalt 0 to 1.8e6
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double toAbsorption(double platinumCobalt) {
        Require.inRange("platinumCobalt", platinumCobalt, 0, 1.8e6, "Pt-Co", "tank water has about 0 to 20");
        return (platinumCobalt + OFFSET) / SLOPE;
    }
}
