package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Reason;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Which observations speak for and against a cause: for each, the ratio of how likely it is with the cause to how likely
 * it is without, all other observations held (a leave-one-out Bayes factor).
 */
final class CauseEvidence {
    private static final double WORTH_SAYING_LOG = Math.log(1.3);
    private static final int MOST_LINES = 4;

    private final Belief belief;
    private final Cause[] named;
    private final double[] now = new double[Cause.values().length];
    private final double[][] before;

    CauseEvidence(Belief belief, Cause[] named) {
        this.belief = belief;
        this.named = named;
        this.before = new double[belief.observations().size()][];
        for (int i = 0; i < named.length; i++) {
            now[named[i].ordinal()] += belief.possibilities().get(i).weight();
        }
    }

    /** The cause with its strongest observations, strongest first; only the heading when {@code detailed} is false. */
    Reason tree(Cause cause, boolean detailed) {
        Phrase heading = Phrase.of(cause.nameKey());
        if (!detailed) {
            return Reason.of(heading);
        }
        record Line(double log, Reason reason) {}
        List<Line> lines = new ArrayList<>();
        for (int k = 0; k < belief.observations().size(); k++) {
            double log = logFactor(cause, k);
            if (Math.abs(log) >= WORTH_SAYING_LOG) {
                lines.add(new Line(log, Reason.of(sentence(belief.observations().get(k), log))));
            }
        }
        lines.sort(Comparator.comparingDouble((Line line) -> -Math.abs(line.log())));
        return new Reason(
                heading, lines.stream().limit(MOST_LINES).map(Line::reason).toList());
    }

    private static Phrase sentence(Observation observation, double log) {
        double size = Math.abs(log);
        String strength = size > Math.log(10) ? "strongly" : size > Math.log(3) ? "plainly" : "weakly";
        String side = log > 0 ? "diagnosis.for." : "diagnosis.against.";
        double times = Math.min(100, Math.exp(Math.abs(log)));
        return Phrase.of(
                side + strength,
                ObservationWords.of(observation),
                io.github.weirwise.report.Quantity.of(times, io.github.weirwise.report.Unit.COUNT));
    }

    /** Logarithm of P(observation | cause, rest) / P(observation | no cause, rest). */
    private double logFactor(Cause cause, int observation) {
        double[] before = before(observation);
        double withNow = now[cause.ordinal()];
        double withBefore = before[cause.ordinal()];
        double withoutNow = Arrays.stream(now).sum() - withNow;
        double withoutBefore = Arrays.stream(before).sum() - withBefore;
        if (withBefore <= 0 || withoutBefore <= 0 || withNow <= 0 || withoutNow <= 0) {
            return 0;
        }
        return Math.log(withNow / withBefore) - Math.log(withoutNow / withoutBefore);
    }

    /** Weight of each cause, up to a factor, as it was before an observation; reckoned once. */
    private double[] before(int observation) {
        if (before[observation] == null) {
            double[] sums = new double[now.length];
            for (int i = 0; i < named.length; i++) {
                double weight = belief.possibilities().get(i).weight();
                sums[named[i].ordinal()] += weight * Math.exp(-belief.observationLog(i, observation));
            }
            before[observation] = sums;
        }
        return before[observation];
    }

    /**
     * How ill the worst of the newest reading's observations fits: the logarithm of what all else expects of it (its likelihood
     * left out), against the best that an observation of its kind can fit; 0 or less.
     */
    double worstFitLog() {
        int count = belief.evidence()
                .get(belief.evidence().size() - 1)
                .reading()
                .observations()
                .size();
        int total = belief.observations().size();
        double worst = 0;
        for (int k = total - count; k < total; k++) {
            double inverse = 0;
            for (int i = 0; i < belief.possibilities().size(); i++) {
                double weight = belief.possibilities().get(i).weight();
                inverse += weight < 1e-12 ? 0 : weight * Math.exp(-belief.observationLog(i, k));
            }
            worst = Math.min(
                    worst,
                    -Math.log(inverse) - Likelihood.most(belief.observations().get(k)));
        }
        return worst;
    }
}
