package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.reading.Part;
import java.util.Arrays;
import java.util.Set;

/**
 * What looking further is worth. Each look settles about one more question (this part, that part, something that passes,
 * or nothing but the weir), likeliest first; whatever is settled can be done right in one step. A rough bound on a search
 * without recall, cheap enough to ask of every outcome of every look.
 */
final class Inquiry {
    /** What one further look costs, about. */
    private static final double LOOK_COST = 0.035;
    /** Worth of a step once the question is settled. */
    private static final double SETTLED = 0.93;
    /** Worth of having to act although the question is open. */
    private static final double OPEN = 0.55;

    private static final int PASSING = Part.values().length;
    private static final int SOUND = PASSING + 1;
    private static final int QUESTIONS = SOUND + 1;

    private final int[] questions;

    Inquiry(Situation situation) {
        questions = situation.sample().stream().mapToInt(Inquiry::question).toArray();
    }

    private static int question(Possibility each) {
        Set<Part> faulty = each.faultyParts(StepValues.FAULT);
        if (!faulty.isEmpty()) {
            return faulty.iterator().next().ordinal();
        }
        return each.passing(StepValues.PASSING) ? PASSING : SOUND;
    }

    /**
     * Worth of going on looking.
     *
     * @param weights one per possibility of the sample; need not add up to 1
     * @param looksLeft how many looks a person's patience allows, 0 or more
     * @return worth times the sum of the weights; 0 without looks
     */
    double worth(double[] weights, int looksLeft) {
        if (looksLeft <= 0) {
            return 0;
        }
        double[] shares = new double[QUESTIONS];
        for (int i = 0; i < weights.length; i++) {
            shares[questions[i]] += weights[i];
        }
        Arrays.sort(shares);
        double worth = 0;
        for (int rank = 0; rank < QUESTIONS; rank++) {
            double share = shares[QUESTIONS - 1 - rank];
            double looks = Math.min(rank + 1, looksLeft);
            worth += share * ((rank <= looksLeft ? SETTLED : OPEN) - LOOK_COST * looks);
        }
        return worth;
    }
}
