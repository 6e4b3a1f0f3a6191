package io.github.weirwise.demo.look;

import io.github.weirwise.unit.SkimmateStrength;
import java.awt.Color;

/** Colour on the screen of skimmate of a given darkness, as {@link SkimmateStrength#packedColour} computes it. */
public final class SkimmateColour {
    private SkimmateColour() {}

    /** The colour for a darkness in platinum-cobalt units; darkness under 0 counts as 0. */
    public static Color of(double ptCo) {
        return new Color(SkimmateStrength.packedColour(ptCo));
    }
}
