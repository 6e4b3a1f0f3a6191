package io.github.weirwise.diagnosis;

import java.util.stream.IntStream;

/** A straight line in the state that most components have no part in. */
final class Line {
    private final double[] factors;
    private final int[] at;

    /** Of a factor for each component; the array is not copied. */
    Line(double[] factors) {
        this.factors = factors;
        this.at =
                IntStream.range(0, factors.length).filter(i -> factors[i] != 0).toArray();
    }

    double[] factors() {
        return factors;
    }

    double at(double[] state) {
        double sum = 0;
        for (int i : at) {
            sum += factors[i] * state[i];
        }
        return sum;
    }
}
