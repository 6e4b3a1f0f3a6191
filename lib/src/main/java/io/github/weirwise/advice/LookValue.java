package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Expected;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.List;

/**
 * What a named reading is worth: the expected worth of the best that can be done after it, over its possible outcomes
 * (value of information); after an outcome that settles nothing, that may be to go on looking.
 */
final class LookValue {
    /** A look that gains less than this tells next to nothing. */
    private static final double TELLING = 0.004;

    private final Situation situation;
    private final StepValues values;
    private final LookOutcomes outcomes;
    private final Inquiry inquiry;
    private final int looksAfter;
    private final double uninformed;

    /**
     * @param looksLeft how many looks a person's patience allows, this one among them
     */
    LookValue(Situation situation, StepValues values, int looksLeft) {
        this.situation = situation;
        this.values = values;
        this.outcomes = new LookOutcomes(situation);
        this.inquiry = new Inquiry(situation);
        this.looksAfter = looksLeft - 1;
        double[] even = new double[situation.sample().size()];
        Arrays.fill(even, 1.0 / even.length);
        this.uninformed = bestWorth(even);
    }

    /**
     * Worth of the best that can be done after the look; 0 where the look tells next to nothing, so that patience is not
     * spent on a look that merely leaves the question open.
     */
    double after(LookKind kind) {
        List<Observation> possible = outcomes.of(kind);
        if (possible.size() < 2) {
            return 0;
        }
        double[][] shares = shares(possible);
        double informed = 0;
        for (double[] share : shares) {
            informed += bestWorth(share);
        }
        return informed - uninformed < TELLING ? 0 : informed;
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
        return Math.max(best, inquiry.worth(share, looksAfter));
    }
}
