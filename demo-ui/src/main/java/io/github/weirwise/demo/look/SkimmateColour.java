package io.github.weirwise.demo.look;

import io.github.weirwise.internal.physics.colour.DissolvedColour;
import java.awt.Color;

/**
 * Colour on the screen of skimmate of a given darkness in a 20 mm white vial: daylight goes through to the white wall and
 * back, so it passes {@value #PATH_M} m. Real skimmate is turbid too and looks duller.
 */
public final class SkimmateColour {
    private static final double PATH_M = 0.040;
    private static final double DARKEST_PT_CO = 100000;

    private SkimmateColour() {}

    /** The colour for a darkness in platinum-cobalt units; darkness under 0 counts as 0. */
    public static Color of(double ptCo) {
        double shown = Math.max(0, Math.min(DARKEST_PT_CO, ptCo));
        return new Color(
                DissolvedColour.ofPlatinumCobalt(shown).colourThrough(PATH_M).packed());
    }
}
