package io.github.weirwise.diagnosis;

import java.util.ArrayList;
import java.util.List;

/** Systematic resampling: equally spaced marks along the cumulative weight. */
final class Resampling {
    private Resampling() {}

    /**
     * Picks with repetition, each about as often as its weight asks.
     *
     * @param weights together 1
     * @param offset where the first mark lies within its interval, 0 to 1
     */
    static <T> List<T> pick(List<T> from, double[] weights, int count, double offset) {
        List<T> picked = new ArrayList<>(count);
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i];
            while (picked.size() < count && (picked.size() + offset) / count < sum) {
                picked.add(from.get(i));
            }
        }
        while (picked.size() < count) {
            picked.add(from.get(from.size() - 1));
        }
        return picked;
    }
}
