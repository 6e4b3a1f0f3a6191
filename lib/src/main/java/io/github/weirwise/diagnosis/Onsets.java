package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * When a lasting cause may have begun: before the journal or at any time within it, with most draws where the readings
 * jump without a change of settings or a service that would explain it; the correction takes the lean back.
 */
final class Onsets {
    /** Faults begin evenly over time; one that still acts began within the journal or at most so long before it; assumed. */
    private static final double BEFORE_JOURNAL_HOURS = 160;
    /** In a journal this short nothing can be seen to begin. */
    private static final double SHORTEST_JOURNAL_HOURS = 12;

    private static final double AMOUNT_LOG = 0.45;
    private static final double LEVEL_MM = 2.8;
    private static final double MOST_JUMP = 4;
    private static final double LEAN = 6;

    private final double[] from;
    private final double[] to;
    private final double[] prior;
    private final double[] drawn;

    Onsets(SkimmerUnit unit, Timeline timeline) {
        double start = timeline.startHours();
        List<Double> marks = new ArrayList<>(List.of(start - BEFORE_JOURNAL_HOURS, start));
        List<Double> jumps = new ArrayList<>(List.of(0.0));
        if (start <= -SHORTEST_JOURNAL_HOURS) {
            stretches(unit, timeline, marks, jumps);
        }
        int count = marks.size() - 1;
        from = new double[count];
        to = new double[count];
        prior = new double[count];
        drawn = new double[count];
        double sum = 0;
        for (int k = 0; k < count; k++) {
            from[k] = marks.get(k);
            to[k] = marks.get(k + 1);
            prior[k] = (to[k] - from[k]) / (to[count - 1] - from[0]);
            // A cause that grows shows itself a stretch after it began.
            double jump = Math.max(jumps.get(k), k + 1 < count ? jumps.get(k + 1) : 0);
            drawn[k] = prior[k] * (1 + LEAN * jump);
            sum += drawn[k];
        }
        for (int k = 0; k < count; k++) {
            drawn[k] /= sum;
        }
    }

    private static void stretches(SkimmerUnit unit, Timeline timeline, List<Double> marks, List<Double> jumps) {
        Timeline.TimedReading before = null;
        for (Timeline.TimedReading each : timeline.readings()) {
            if (each.reading().find(Observation.CupVolume.class).isEmpty()) {
                continue;
            }
            if (each.hours() > marks.get(marks.size() - 1)) {
                marks.add(each.hours());
                jumps.add(before == null ? 0 : jump(unit, timeline, before, each));
            }
            before = each;
        }
        if (marks.get(marks.size() - 1) < 0) {
            marks.add(0.0);
            jumps.add(0.0);
        }
    }

    private static double jump(
            SkimmerUnit unit, Timeline timeline, Timeline.TimedReading before, Timeline.TimedReading now) {
        boolean changed = timeline.segmentAt(before.hours()) != timeline.segmentAt(now.hours())
                || timeline.services().stream()
                        .anyMatch(each -> each.hours() > before.hours() - 24 && each.hours() <= now.hours());
        if (changed) {
            return 0;
        }
        double amount = Math.abs(logAmount(unit, now) - logAmount(unit, before)) / AMOUNT_LOG;
        double level = Math.abs(level(now) - level(before)) / LEVEL_MM;
        return Math.min(MOST_JUMP, Math.max(amount, Double.isNaN(level) ? 0 : level));
    }

    private static double logAmount(SkimmerUnit unit, Timeline.TimedReading reading) {
        double mlPerDay = reading.reading()
                .find(Observation.CupVolume.class)
                .orElseThrow()
                .mlPerDay();
        return Math.log(mlPerDay / unit.target().skimmateMlPerDay() + Likelihood.LEAST_SHARE);
    }

    private static double level(Timeline.TimedReading reading) {
        return reading.reading()
                .find(Observation.FunnelLevel.class)
                .map(Observation.FunnelLevel::mm)
                .orElse(Double.NaN);
    }

    /** The hour that a uniform number stands for. */
    double hour(double uniform) {
        double left = uniform;
        int k = 0;
        while (k < drawn.length - 1 && left > drawn[k]) {
            left -= drawn[k];
            k++;
        }
        return from[k] + Math.min(1, left / drawn[k]) * (to[k] - from[k]);
    }

    /** Logarithm of prior over drawn density at an hour. */
    double logCorrection(double hour) {
        int k = drawn.length - 1;
        while (k > 0 && hour < from[k]) {
            k--;
        }
        return Math.log(prior[k] / drawn[k]);
    }
}
