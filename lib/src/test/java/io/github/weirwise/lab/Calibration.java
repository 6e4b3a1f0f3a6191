package io.github.weirwise.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How stated chances compare with what came: reliability in bins of equal count and expected calibration error.
 */
final class Calibration {
    private static final int BINS = 10;

    /** One stated chance and whether it came. */
    record Pair(double chance, boolean came) {}

    /** One bin: how many, mean stated chance, share that came. */
    record Bin(int count, double stated, double came) {}

    private final List<Pair> pairs;
    private final List<Bin> bins;

    Calibration(List<Pair> unsorted) {
        pairs = unsorted.stream()
                .sorted(Comparator.comparingDouble(Pair::chance))
                .toList();
        bins = new ArrayList<>();
        for (int b = 0; b < BINS && !pairs.isEmpty(); b++) {
            int from = (int) ((long) pairs.size() * b / BINS);
            int to = (int) ((long) pairs.size() * (b + 1) / BINS);
            if (to > from) {
                bins.add(bin(pairs.subList(from, to)));
            }
        }
    }

    private static Bin bin(List<Pair> some) {
        double stated = some.stream().mapToDouble(Pair::chance).average().orElse(0);
        double came =
                some.stream().mapToDouble(each -> each.came() ? 1 : 0).average().orElse(0);
        return new Bin(some.size(), stated, came);
    }

    int count() {
        return pairs.size();
    }

    List<Bin> bins() {
        return bins;
    }

    /** Mean distance between stated and come, weighted by count. */
    double expectedError() {
        double sum = 0;
        for (Bin bin : bins) {
            sum += bin.count() * Math.abs(bin.stated() - bin.came());
        }
        return pairs.isEmpty() ? 0 : sum / pairs.size();
    }

    /** Mean stated chance. */
    double meanStated() {
        return pairs.stream().mapToDouble(Pair::chance).average().orElse(0);
    }

    double baseRate() {
        return pairs.stream().mapToDouble(each -> each.came() ? 1 : 0).average().orElse(0);
    }
}
