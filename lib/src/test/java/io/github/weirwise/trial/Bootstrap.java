package io.github.weirwise.trial;

import io.github.weirwise.report.Range;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/** Percentile intervals by drawing tanks with replacement (Efron 1979); seeded. */
final class Bootstrap {
    private static final int DRAWS = 400;

    private Bootstrap() {}

    /** The middle 95 % of the mean. */
    static Range of(double[] values) {
        SplittableRandom random = new SplittableRandom(values.length);
        double[] means = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            double sum = 0;
            for (int i = 0; i < values.length; i++) {
                sum += values[random.nextInt(values.length)];
            }
            means[d] = sum / values.length;
        }
        Arrays.sort(means);
        return new Range(means[(int) (0.025 * DRAWS)], means[(int) (0.975 * DRAWS) - 1]);
    }

    static Range of(List<Outcome> outcomes, ToDoubleFunction<Outcome> what) {
        return of(outcomes.stream().mapToDouble(what).toArray());
    }

    /** The middle 95 % of the mean difference between two policies on the same tanks. */
    static Range ofDifference(List<Outcome> one, List<Outcome> other, ToDoubleFunction<Outcome> what) {
        double[] differences = new double[one.size()];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = what.applyAsDouble(one.get(i)) - what.applyAsDouble(other.get(i));
        }
        return of(differences);
    }
}
