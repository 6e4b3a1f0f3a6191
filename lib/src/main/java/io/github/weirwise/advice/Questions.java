package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Possibility;
import io.github.weirwise.unit.Part;
import java.util.List;
import java.util.Set;

/**
 * What there is to find out: which part is at fault, or something that passes, or nothing but where the weir stands. Each
 * possibility answers one question; the likeliest is asked first.
 */
final class Questions {
    private static final int PASSING = Part.values().length;
    /** Nothing but the weir. */
    static final int WEIR = PASSING + 1;

    private static final int COUNT = WEIR + 1;

    private final int[] answered;

    Questions(List<Possibility> sample) {
        answered = sample.stream().mapToInt(Questions::answeredBy).toArray();
    }

    private static int answeredBy(Possibility each) {
        Set<Part> faulty = each.faultyParts(StepValues.FAULT);
        if (!faulty.isEmpty()) {
            return about(faulty.iterator().next());
        }
        return each.passing(StepValues.PASSING) ? PASSING : WEIR;
    }

    /** The question whether a part is at fault. */
    static int about(Part part) {
        return part.ordinal();
    }

    /** The question that a possibility of the sample answers. */
    int of(int possibility) {
        return answered[possibility];
    }

    /**
     * The weight of each question.
     *
     * @param weights one per possibility of the sample
     */
    double[] shares(double[] weights) {
        double[] shares = new double[COUNT];
        for (int i = 0; i < weights.length; i++) {
            shares[answered[i]] += weights[i];
        }
        return shares;
    }

    /** The weight of each question once every possibility's weight is multiplied by a chance. */
    double[] shares(double[] weights, double[] chances) {
        double[] shares = new double[COUNT];
        for (int i = 0; i < weights.length; i++) {
            shares[answered[i]] += weights[i] * chances[i];
        }
        return shares;
    }

    /** The place of each question, 0 for the one with the greatest share. */
    static int[] ranks(double[] shares) {
        int[] ranks = new int[shares.length];
        for (int one = 0; one < shares.length; one++) {
            for (int other = 0; other < one; other++) {
                ranks[shares[other] >= shares[one] ? one : other]++;
            }
        }
        return ranks;
    }
}
