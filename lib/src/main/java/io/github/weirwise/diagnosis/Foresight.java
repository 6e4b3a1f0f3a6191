package io.github.weirwise.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * What a look will show, branch by branch.
 *
 * @since 0.2
 */
public final class Foresight {
    /** Gauss-Hermite points and weights of order 5 for the standard normal (Abramowitz and Stegun 25.4.46). */
    private static final double[] POINTS = {-2.85697, -1.35563, 0, 1.35563, 2.85697};

    private static final double[] WEIGHTS = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};

    private static final int[] LIKELIEST_FIRST = {2, 1, 3, 0, 4};

    private final List<Prospect.Foretold> branches;
    private final double mean;
    private final double sd;

    Foresight(List<Prospect.Foretold> branches) {
        this.branches = List.copyOf(branches);
        double sum = 0;
        for (Prospect.Foretold each : branches) {
            sum += each.weight() * each.mean();
        }
        double var = 0;
        for (Prospect.Foretold each : branches) {
            double off = each.mean() - sum;
            var += each.weight() * (each.variance() + off * off);
        }
        mean = sum;
        sd = Math.sqrt(var);
    }

    /** How many outcomes stand for all. */
    public int outcomes() {
        return POINTS.length;
    }

    /** The outcomes in an order in which none is likelier than the one before. */
    public int[] likeliestFirst() {
        return LIKELIEST_FIRST.clone();
    }

    /** An outcome, on the instrument's own scale. */
    public double outcome(int i) {
        return mean + sd * POINTS[i];
    }

    /** How likely an outcome is; they add up to 1. */
    public double chance(int i) {
        return WEIGHTS[i];
    }

    /** The branches after the look showed a value, weighed anew. */
    public Prospects after(double value) {
        double[] weights = new double[branches.size()];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = branches.get(i).weightAfter(value);
            sum += weights[i];
        }
        List<Prospect> after = new ArrayList<>(weights.length);
        for (int i = 0; i < weights.length; i++) {
            after.add(branches.get(i).after(value, weights[i] / sum));
        }
        return new Prospects(after);
    }
}
