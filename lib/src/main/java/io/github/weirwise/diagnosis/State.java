package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Fouling;
import io.github.weirwise.unit.Part;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where each unknown stands in the belief's state. Logarithms are natural, sizes of parts run from 0 (clean) to 1 (at its worst).
 */
final class State {
    /** The unit's own foaminess: logarithm of the amount at the wanted level with everything clean, over the wanted amount. */
    static final int FOAM = 0;
    /** Logarithm of the slope, which is the logarithm of the amount a millimetre of level. */
    static final int SLOPE = 1;
    /** Exponent of the amount in the gas that reaches the foam. */
    static final int AIR_EXPONENT = 2;
    /** Level of this unit over that of its sheet, mm. */
    static final int OFFSET = 3;
    /** What passes by itself: food, oil, additives, a restart; a logarithm of the amount. */
    static final int PASSING = 4;
    /** How much darker than the law this water is, or is called; a logarithm. */
    static final int TONE = 5;
    /** Where the first two readers see a level in bubbly water, mm over the true one. */
    static final int EYE = 6;

    static final int EYES = 2;
    /** First of the sizes of the parts, in the order of {@link Part#SERVICEABLE}. */
    static final int PARTS = EYE + EYES;

    static final int PART_COUNT = Part.SERVICEABLE.size();
    /** First of the logarithms of how fast a part fouls over its usual pace. */
    static final int PACES = PARTS + PART_COUNT;

    private static final double SLOWEST_DAYS = 1000;
    /** Parts that foul a little every day, each at its own pace. */
    static final List<Part> PACED = Part.SERVICEABLE.stream()
            .filter(part -> part.fouling().kind() == Fouling.Kind.GROWS
                    && part.fouling().daysToWorst() < SLOWEST_DAYS)
            .sorted(Comparator.comparingDouble(part -> part.fouling().daysToWorst()))
            .toList();

    static final int SIZE = PACES + PACED.size();

    private static final int[] PART_AT = new int[Part.values().length];
    private static final int[] PACE_AT = new int[Part.values().length];

    static {
        Arrays.fill(PART_AT, -1);
        Arrays.fill(PACE_AT, -1);
        for (Part part : Part.SERVICEABLE) {
            PART_AT[part.ordinal()] = PARTS + Part.SERVICEABLE.indexOf(part);
        }
        for (Part part : PACED) {
            PACE_AT[part.ordinal()] = PACES + PACED.indexOf(part);
        }
    }

    private State() {}

    /** Position of a part's size; -1 for a place that has none. */
    static int of(Part part) {
        return PART_AT[part.ordinal()];
    }

    /** Position of a part's pace; -1 for a part that has none. */
    static int paceOf(Part part) {
        return PACE_AT[part.ordinal()];
    }

    /** What belongs to the sizes of the parts. */
    static double[] parts(double[] components) {
        return Arrays.copyOfRange(components, PARTS, PACES);
    }
}
