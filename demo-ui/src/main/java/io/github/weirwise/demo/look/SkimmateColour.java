package io.github.weirwise.demo.look;

import io.github.weirwise.colour.PlatinumCobalt;
import java.awt.Color;

/** Colour on the screen of skimmate of a given darkness in a 20 mm vial before white. */
public final class SkimmateColour {
    private static final double PATH_M = 0.020;
    private static final double SLOPE_PER_NM = 0.017;
    private static final double[] RGB_NM = {605, 545, 455};

    private SkimmateColour() {}

    /** The colour for a darkness in platinum-cobalt units, 0 or more. */
    public static Color of(double ptCo) {
        double absorption = PlatinumCobalt.toAbsorption(Math.max(0, ptCo));
        int[] parts = new int[RGB_NM.length];
        for (int i = 0; i < parts.length; i++) {
            double passed = Math.exp(-absorption * Math.exp(-SLOPE_PER_NM * (RGB_NM[i] - 440)) * PATH_M);
            parts[i] = (int) Math.round(255 * encode(passed));
        }
        return new Color(parts[0], parts[1], parts[2]);
    }

    /** The transfer curve of sRGB (IEC 61966-2-1). */
    private static double encode(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }
}
