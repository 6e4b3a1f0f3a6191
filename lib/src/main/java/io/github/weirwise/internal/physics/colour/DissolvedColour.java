package io.github.weirwise.internal.physics.colour;

import io.github.weirwise.report.Require;

/**
 * Colour of water by its dissolved organic matter: absorption a(l) = a440 exp(-S (l - 440)) in 1/m, base e (Bricaud, Morel
 * &amp; Prieur 1981, Limnology and Oceanography 26:43), and daylight after a path through it.
 *
 * <p>Only absorption by the organic matter; water's own is left out (it is nothing over centimetres) and so is light
 * scattered by turbid liquid, which makes real skimmate look paler and duller than its absorption.
 *
 * @param absorption440PerM a440, 0 to 1e5 1/m
 * @param slopePerNm S, 0.001 to 0.05 1/nm; 0.010 to 0.025 is found in natural waters (Twardowski et al. 2004, from memory)
 */
public record DissolvedColour(double absorption440PerM, double slopePerNm) {
    /** The commonest slope, 1/nm (Bricaud et al. 1981). */
    public static final double COMMON_SLOPE = 0.014;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public DissolvedColour {
        Require.inRange("absorption440PerM", absorption440PerM, 0, 1e5, "1/m", "give a base-e absorption");
        Require.inRange("slopePerNm", slopePerNm, 0.001, 0.05, "1/nm", "natural waters have 0.010 to 0.025");
    }

    /**
     * Water of a given platinum-cobalt colour, with the commonest slope.
     *
     * @param platinumCobalt 0 to 1.8e6 platinum-cobalt units; see {@link PlatinumCobalt}
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static DissolvedColour ofPlatinumCobalt(double platinumCobalt) {
        return new DissolvedColour(PlatinumCobalt.toAbsorption(platinumCobalt), COMMON_SLOPE);
    }

    /**
     * Absorption at a wavelength, 1/m base e.
     *
     * @param wavelengthNm 200 to 1100 nm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double absorption(double wavelengthNm) {
        Require.inRange("wavelengthNm", wavelengthNm, 200, 1100, "nm", "light has 380 to 780 nm");
        return absorption440PerM * Math.exp(-slopePerNm * (wavelengthNm - 440));
    }

    /**
     * D65 daylight after a path through the water.
     *
     * @param pathM length of the path, 0 to 1000 m; twice the depth when seen against a white ground
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Tristimulus through(double pathM) {
        Require.inRange("pathM", pathM, 0, 1000, "m", "a vial of 20 mm has a path of 0.02 m");
        return Tristimulus.ofTransmission(nm -> Math.exp(-absorption(nm) * pathM));
    }

    /**
     * The same as a colour to paint with.
     *
     * @param pathM length of the path, 0 to 1000 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Srgb colourThrough(double pathM) {
        return Srgb.of(through(pathM));
    }
}
