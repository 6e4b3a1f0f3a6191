package io.github.weirwise.diagnosis;

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

    private final List<Prospect.Foretold> branches;
    private final double mean;
    private final double sd;

    Foresight(List<Prospect.Foretold> branches, List<Prospect> prospects) {
        this.branches = List.copyOf(branches);
        double sum = 0;
        for (int i = 0; i < branches.size(); i++) {
            sum += prospects.get(i).weight() * branches.get(i).mean;
        }
        double var = 0;
        for (int i = 0; i < branches.size(); i++) {
            double off = branches.get(i).mean - sum;
            var += prospects.get(i).weight() * (branches.get(i).variance + off * off);
        }
        mean = sum;
        sd = Math.sqrt(var);
    }

    Prospect.Foretold branch(int i) {
        return branches.get(i);
    }

    /** How many outcomes stand for all. */
    public int outcomes() {
        return POINTS.length;
    }

    /** An outcome, on the instrument's own scale. */
    public double outcome(int i) {
        return mean + sd * POINTS[i];
    }

    /** How likely an outcome is; they add up to 1. */
    public double chance(int i) {
        return WEIGHTS[i];
    }
}
