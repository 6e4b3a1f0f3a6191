package io.github.weirwise.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale from numbers to places on paper, with round marks.
 *
 * @param low number at {@code start}
 * @param high number at {@code end}, above {@code low}
 * @param start place of the low end
 * @param end place of the high end
 */
record ChartScale(double low, double high, double start, double end) {
    /** A scale that begins and ends at round marks around two numbers. */
    static ChartScale around(double least, double most, double start, double end, int marks) {
        double step = step(Math.max(most - least, 1e-6), marks);
        double low = Math.floor(least / step) * step;
        double high = Math.ceil(most / step) * step;
        return new ChartScale(low, high > low ? high : low + step, start, end);
    }

    double at(double value) {
        return start + (value - low) / (high - low) * (end - start);
    }

    /** Round numbers from end to end. */
    List<Double> marks(int about) {
        double step = step(high - low, about);
        List<Double> marks = new ArrayList<>();
        for (long i = Math.round(Math.ceil(low / step - 1e-9)); i * step <= high + 1e-9 * step; i++) {
            marks.add(i * step);
        }
        return marks;
    }

    /** 1, 2 or 5 times a power of ten, so that about as many steps fill the span. */
    private static double step(double span, int about) {
        double raw = span / about;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double share = raw / power;
        return power * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
