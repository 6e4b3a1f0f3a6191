package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.unit.Part;
import java.util.EnumSet;
import java.util.Set;

/**
 * How likely each cause is before the readings are weighed: its table weight, raised by what the journal says happened and
 * lowered where something that would have been noted was not. Sampling is flatter than the prior, so that rare causes have
 * enough possibilities, and leans to causes that direct signs speak for; the difference goes into their weights.
 */
final class CausePrior {
    /** After an additive or a first start its effect is nearly certain; after food or a top-off it is merely likely. */
    private static final double SURELY_HERALDED = 50;

    private static final double HERALDED = 10;
    /** A part is most often seated wrong after washing. */
    private static final double SEATED_AFTER_WASHING = 4;

    private static final double WASHED_HOURS = 240;
    private static final double UNHERALDED = 0.4;
    private static final double BREAK_IN_UNHERALDED = 0.1;
    private static final double NOT_CHANGED = 0.1;
    /** A herald counts for this many of the cause's own waiting times. */
    private static final double MEMORY = 1.3;

    /** Even a cause that fits badly is drawn now and then. */
    private static final double LEAST_FIT = 0.003;

    private static final double CHANGED_HOURS = 36;

    private static final Set<Cause> SURE = Set.of(Cause.BREAK_IN, Cause.FOAMING_AGENT, Cause.MEDICATION);

    private final Cause[] causes;
    private final double[] prior;
    private final double[] cumulativeSampling;
    private final double[] sampling;

    CausePrior(Timeline timeline, DirectSigns signs) {
        causes = java.util.Arrays.stream(Cause.values())
                .filter(cause -> cause.priorWeight() > 0)
                .toArray(Cause[]::new);
        prior = new double[causes.length];
        sampling = new double[causes.length];
        cumulativeSampling = new double[causes.length];
        double priorSum = 0;
        double samplingSum = 0;
        double[] fits = fits(signs);
        for (int i = 0; i < causes.length; i++) {
            prior[i] = weight(causes[i], timeline);
            sampling[i] = Math.sqrt(prior[i] * fits[i]);
            priorSum += prior[i];
            samplingSum += sampling[i];
        }
        double sum = 0;
        for (int i = 0; i < causes.length; i++) {
            prior[i] /= priorSum;
            sampling[i] /= samplingSum;
            sum += sampling[i];
            cumulativeSampling[i] = sum;
        }
    }

    /** How well each cause fits the direct signs, the best at 1, none at next to nothing. */
    private double[] fits(DirectSigns signs) {
        double[] fits = java.util.Arrays.stream(causes).mapToDouble(signs::fit).toArray();
        double best = java.util.Arrays.stream(fits).max().orElse(1);
        return java.util.Arrays.stream(fits)
                .map(fit -> Math.max(LEAST_FIT, fit / best))
                .toArray();
    }

    private static double weight(Cause cause, Timeline timeline) {
        if (cause == Cause.JUST_CHANGED) {
            return cause.priorWeight() * (changedLately(timeline) ? 1 : NOT_CHANGED);
        }
        if (cause == Cause.PART_SEATED_WRONG) {
            boolean washed = !Double.isNaN(timeline.servicedBetween(Part.NECK_AND_CUP, -WASHED_HOURS, 0));
            return cause.priorWeight() * (washed ? SEATED_AFTER_WASHING : 1);
        }
        if (cause.heralds().isEmpty()) {
            return cause.priorWeight();
        }
        double herald = heraldHours(cause, timeline);
        if (!Double.isNaN(herald)) {
            return cause.priorWeight() * (SURE.contains(cause) ? SURELY_HERALDED : HERALDED);
        }
        if (!cause.passes()) {
            return cause.priorWeight();
        }
        return cause.priorWeight() * (cause == Cause.BREAK_IN ? BREAK_IN_UNHERALDED : UNHERALDED);
    }

    /** Hour of the newest herald that still counts, or NaN. */
    static double heraldHours(Cause cause, Timeline timeline) {
        Set<Happening.Kind> kinds = cause.heralds();
        if (kinds.isEmpty()) {
            return Double.NaN;
        }
        double at = timeline.lastHappening(kinds, 0);
        return at >= -MEMORY * Math.max(72, cause.remedy().hours()) ? at : Double.NaN;
    }

    private static boolean changedLately(Timeline timeline) {
        double restart = timeline.lastHappening(EnumSet.of(Happening.Kind.PUMP_RESTARTED), 0);
        boolean washed = !Double.isNaN(timeline.servicedBetween(Part.NECK_AND_CUP, -CHANGED_HOURS, 0));
        return washed || restart >= -CHANGED_HOURS;
    }

    /** Index of the cause that a uniform number picks. */
    int pick(double uniform) {
        int index = 0;
        while (index < causes.length - 1 && uniform > cumulativeSampling[index]) {
            index++;
        }
        return index;
    }

    Cause cause(int index) {
        return causes[index];
    }

    /** Logarithm of prior over sampling probability. */
    double logCorrection(int index) {
        return Math.log(prior[index] / sampling[index]);
    }

    double prior(Cause cause) {
        for (int i = 0; i < causes.length; i++) {
            if (causes[i] == cause) {
                return prior[i];
            }
        }
        return 0;
    }
}
