package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Expected;
import io.github.weirwise.reading.Observation;
import java.util.List;

/**
 * What a named reading is worth: the expected worth of the best step after it, over its possible outcomes, less the best
 * step without it (value of information).
 */
final class LookValue {
    private final Situation situation;
    private final StepValues values;
    private final LookOutcomes outcomes;

    LookValue(Situation situation, StepValues values) {
        this.situation = situation;
        this.values = values;
        this.outcomes = new LookOutcomes(situation);
    }

    /** Gain in worth, 0 or more up to sampling error. */
    double of(LookKind kind) {
        List<Observation> possible = outcomes.of(kind);
        if (possible.size() < 2) {
            return 0;
        }
        double[][] shares = shares(possible);
        double informed = 0;
        for (double[] share : shares) {
            informed += bestWorth(share);
        }
        return informed - values.mean(values.best());
    }

    /** For each outcome, each possibility's weight times the chance that it shows this outcome. */
    private double[][] shares(List<Observation> possible) {
        int count = situation.sample().size();
        double[][] shares = new double[possible.size()][count];
        for (int i = 0; i < count; i++) {
            Expected each = situation.expected().get(i);
            double sum = 0;
            for (int k = 0; k < possible.size(); k++) {
                double likelihood = Math.exp(each.logLikelihood(possible.get(k)));
                shares[k][i] = likelihood;
                sum += likelihood;
            }
            for (int k = 0; k < possible.size(); k++) {
                shares[k][i] /= sum * count;
            }
        }
        return shares;
    }

    private double bestWorth(double[] share) {
        double best = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < values.steps().size(); step++) {
            double worth = 0;
            for (int i = 0; i < share.length; i++) {
                worth += share[i] * values.worth(step, i);
            }
            best = Math.max(best, worth);
        }
        return best;
    }
}
