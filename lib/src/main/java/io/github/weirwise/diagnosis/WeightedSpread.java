package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Quantiles of a number over weighted possibilities. */
final class WeightedSpread {
    private final double[] values;
    private final double[] cumulative;

    private WeightedSpread(double[] values, double[] cumulative) {
        this.values = values;
        this.cumulative = cumulative;
    }

    static WeightedSpread of(List<Possibility> possibilities, IntToDoubleFunction value, IntPredicate counted) {
        double[] all = new double[possibilities.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = value.applyAsDouble(i);
        }
        int[] order = IntStream.range(0, all.length)
                .filter(counted)
                .boxed()
                .sorted((a, b) -> Double.compare(all[a], all[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] sorted = new double[order.length];
        double[] sums = new double[order.length];
        double sum = 0;
        for (int k = 0; k < order.length; k++) {
            sorted[k] = all[order[k]];
            sum += possibilities.get(order[k]).weight();
            sums[k] = sum;
        }
        return new WeightedSpread(sorted, sums);
    }

    /** The value below which a share of the weight lies; 0 when nothing is counted. */
    double quantile(double share) {
        if (values.length == 0) {
            return 0;
        }
        double mark = share * cumulative[cumulative.length - 1];
        int index = 0;
        while (index < values.length - 1 && cumulative[index] < mark) {
            index++;
        }
        return values[index];
    }

    Range range(double low, double high) {
        return new Range(quantile(low), quantile(high));
    }
}
