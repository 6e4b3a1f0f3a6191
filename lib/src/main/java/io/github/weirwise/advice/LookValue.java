package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Expected;
import io.github.weirwise.reading.Observation;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a named reading is worth: the expected worth of the best that can be done after it, over its possible outcomes (value
 * of information). After an outcome that settles nothing the best may be one more look, chosen by what the first has shown; so
 * the look ahead is two looks deep, and a bound stands for those after them ({@link Inquiry}).
 */
final class LookValue {
    /** A look that gains less than this tells next to nothing. */
    private static final double TELLING = 0.004;

    /** So many looks are weighed as the second. */
    private static final int PROMISING = 6;

    private final Situation situation;
    private final StepValues values;
    /** For each look and outcome, the chance of each possibility to show it; looks that can show one thing only are left out. */
    private final Map<LookKind, double[][]> chances = new EnumMap<>(LookKind.class);

    /** The looks that promise most, for looking two deep. */
    private final List<LookKind> promising;

    private final int looksAfter;
    private final int changesLeft;
    private final double[] even;
    private final double actingNow;

    /**
     * @param looks those that may be asked for
     * @param looksLeft how many looks a person's patience allows, this one among them
     * @param changesLeft how many changes it allows
     */
    LookValue(Situation situation, StepValues values, Set<LookKind> looks, int looksLeft, int changesLeft) {
        this.situation = situation;
        this.values = values;
        this.looksAfter = looksLeft - 1;
        this.changesLeft = changesLeft;
        LookOutcomes outcomes = new LookOutcomes(situation);
        for (LookKind look : looks) {
            List<Observation> possible = outcomes.of(look);
            if (possible.size() > 1) {
                chances.put(look, chances(possible));
            }
        }
        even = values.even();
        actingNow = acting(even);
        promising = promising();
    }

    private List<LookKind> promising() {
        Map<LookKind, Double> worths = new EnumMap<>(LookKind.class);
        chances.forEach((look, outcomes) -> worths.put(look, leaf(even, outcomes)));
        return worths.entrySet().stream()
                .sorted(Map.Entry.<LookKind, Double>comparingByValue().reversed())
                .limit(PROMISING)
                .map(Map.Entry::getKey)
                .toList();
    }

    private double[][] chances(List<Observation> possible) {
        int count = situation.sample().size();
        double[][] chances = new double[possible.size()][count];
        for (int i = 0; i < count; i++) {
            Expected each = situation.expected().get(i);
            double sum = 0;
            for (int k = 0; k < possible.size(); k++) {
                chances[k][i] = Math.exp(each.logLikelihood(possible.get(k)));
                sum += chances[k][i];
            }
            for (double[] outcome : chances) {
                outcome[i] /= sum;
            }
        }
        return chances;
    }

    /**
     * Worth of the best that can be done after the look; 0 where the look tells next to nothing, so that patience is not
     * spent on a look that merely leaves the question open.
     */
    double after(LookKind look) {
        if (!chances.containsKey(look)) {
            return 0;
        }
        double informed = 0;
        for (double[] outcome : chances.get(look)) {
            double[] weights = times(even, outcome);
            informed += Math.max(acting(weights), nextLook(weights, look));
        }
        double uninformed = Math.max(actingNow, nextLook(even, look));
        return informed - uninformed < TELLING ? 0 : informed;
    }

    private static double[] times(double[] weights, double[] chances) {
        double[] product = new double[weights.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = weights[i] * chances[i];
        }
        return product;
    }

    /** Worth of the best that can be done without a further look. */
    private double acting(double[] weights) {
        int[] ranks = Questions.ranks(values.questions().shares(weights));
        double best = 0;
        for (int step = 0; step < values.steps().size(); step++) {
            best = Math.max(best, values.expected(step, weights, ranks));
        }
        return best;
    }

    /** Worth of the best look after one was taken. */
    private double nextLook(double[] weights, LookKind taken) {
        if (looksAfter <= 0 || situation.options().looksAhead() < 2) {
            return 0;
        }
        double best = 0;
        for (LookKind next : promising) {
            best = next == taken ? best : Math.max(best, leaf(weights, chances.get(next)));
        }
        return best - Inquiry.LOOK_COST * Arrays.stream(weights).sum();
    }

    /** A bound on what can be done after one look more. */
    private double leaf(double[] weights, double[][] outcomes) {
        double worth = 0;
        for (double[] outcome : outcomes) {
            double[] shares = values.questions().shares(weights, outcome);
            worth += Inquiry.worth(shares, Questions.ranks(shares), looksAfter - 1, changesLeft);
        }
        return worth;
    }
}
