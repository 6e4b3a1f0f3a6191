package io.github.weirwise.lab;

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
        return of(values, ones(values.length));
    }

    /** The middle 95 % of the mean difference between two entrants on the same tanks. */
    static Range ofDifference(List<Outcome> one, List<Outcome> other, ToDoubleFunction<Outcome> what) {
        double[] differences = new double[one.size()];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = what.applyAsDouble(one.get(i)) - what.applyAsDouble(other.get(i));
        }
        return of(differences);
    }

    /** The middle 95 % of the ratio of two entrants' means on the same tanks. */
    static Range ofRatio(List<Outcome> one, List<Outcome> other, ToDoubleFunction<Outcome> what) {
        return of(
                one.stream().mapToDouble(what).toArray(),
                other.stream().mapToDouble(what).toArray());
    }

    private static Range of(double[] over, double[] under) {
        SplittableRandom random = new SplittableRandom(over.length);
        double[] ratios = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            double above = 0;
            double below = 0;
            for (int i = 0; i < over.length; i++) {
                int drawn = random.nextInt(over.length);
                above += over[drawn];
                below += under[drawn];
            }
            ratios[d] = above / below;
        }
        Arrays.sort(ratios);
        return new Range(ratios[(int) (0.025 * DRAWS)], ratios[(int) (0.975 * DRAWS) - 1]);
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }
}
