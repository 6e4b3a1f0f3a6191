package io.github.weirwise.demo.look;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Observation;
import java.awt.Color;

/**
 * Colour on the screen of skimmate of a given darkness. The library computes the colour of what is dissolved, seen through a
 * clear liquid ({@link io.github.weirwise.unit.SkimmateStrength#packedColour}): amber to red. Skimmate is turbid as well, so it looks brown; these
 * browns keep the order of the computed darkness, and their hues are common practice (tea with milk, tea, coffee), not measured.
 */
public final class SkimmateColour {
    private static final double[] PT_CO = {30, 150, 465, 1670, 6000, 30000};
    private static final int[] BROWNS = {0xF5F1E4, 0xEADFC0, 0xC9A878, 0x7D5530, 0x3E2A1A, 0x20150E};

    private SkimmateColour() {}

    /** The colour for a darkness in platinum-cobalt units; taken at the ends beyond 30 and 30000. */
    public static Color of(double ptCo) {
        int next = 1;
        while (next < PT_CO.length - 1 && ptCo > PT_CO[next]) {
            next++;
        }
        double along = Math.log(Math.max(ptCo, 1) / PT_CO[next - 1]) / Math.log(PT_CO[next] / PT_CO[next - 1]);
        return Palette.mix(new Color(BROWNS[next - 1]), new Color(BROWNS[next]), Math.max(0, Math.min(1, along)));
    }

    /** The colour of what was seen; grey when that tells no colour. */
    public static Color of(Observation seen) {
        if (seen instanceof Observation.Darkness told) {
            return of(told.word());
        }
        return seen instanceof Observation.DarknessMatch match ? of(match.ptCo()) : Color.GRAY;
    }

    /** The colour in the middle of what a word stands for. */
    public static Color of(DarknessWord word) {
        return of(PT_CO[word.ordinal()]);
    }
}
