package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import java.util.List;

/** Weighs all readings under one possibility, observation by observation. */
final class Weighing {
    /** Under a reading error the newest level and amount may be anything a person could write down. */
    private static final double ANY_LEVEL_LOG = Math.log(1.0 / 40);

    private static final double ANY_AMOUNT_LOG = Math.log(1.0 / 6);

    /** A cause that changes its size by less than this while the cup fills is taken as steady. */
    private static final double GREW = 0.02;
    /** Gauss's two points lie this share of the time to either side of its middle. */
    private static final double INNER = 0.2887;
    /** Doubt of an amount by its change between those two points. */
    private static final double DOUBTED = 0.6;

    private final Timeline timeline;
    private final List<Evidence> evidence;
    private final Evidence anchor;
    private final int observationCount;

    Weighing(Timeline timeline, List<Evidence> evidence, Evidence anchor, int observationCount) {
        this.timeline = timeline;
        this.evidence = evidence;
        this.anchor = anchor;
        this.observationCount = observationCount;
    }

    /** Logarithms of the likelihoods in the order of the observations; 0 for the amount that the life was solved from. */
    double[] logs(Possibility possibility) {
        double[] logs = new double[observationCount];
        int index = 0;
        int segment = -1;
        double firstSize = -1;
        double secondSize = -1;
        View view = null;
        for (Evidence each : evidence) {
            double firstNow = possibility.firstSizeAt(each.hours());
            double secondNow = possibility.secondSizeAt(each.hours());
            if (segment != each.segment() || firstNow != firstSize || secondNow != secondSize) {
                view = view(possibility, each, settled(possibility, each.segment(), each.hours()));
                segment = each.segment();
                firstSize = firstNow;
                secondSize = secondNow;
            }
            double unsettled = each.unsettled();
            View cupView = view;
            if (grew(possibility, each)) {
                Growing growing = growing(possibility, each);
                unsettled = Math.max(unsettled, growing.doubt());
                cupView = view(possibility, each, mixed(possibility, each, view.outlook(), growing.amount()));
            } else if (!each.earlier().isEmpty() || unsettled > 0) {
                double amount = Math.exp(view.outlook().logAmount());
                cupView = view(possibility, each, mixed(possibility, each, view.outlook(), amount));
            }
            boolean error = each.last() && possibility.cause() == Cause.READING_ERROR;
            for (Observation observation : each.reading().observations()) {
                logs[index++] = log(observation, each, view, cupView, unsettled, error);
            }
        }
        return logs;
    }

    /** Whether a cause grew or faded much while the cup filled. */
    private static boolean grew(Possibility possibility, Evidence each) {
        double from = each.hours() - each.spanHours();
        return Math.abs(possibility.firstSizeAt(from) - possibility.firstSizeAt(each.hours())) > GREW
                || Math.abs(possibility.secondSizeAt(from) - possibility.secondSizeAt(each.hours())) > GREW;
    }

    /**
     * The amount while a cause grew, as the mean over two hours of the cup's time, and how much its course is in doubt:
     * nobody knows just when and how fast a cause grew, and the foam answers steeply.
     */
    private record Growing(double amount, double doubt) {}

    private Growing growing(Possibility possibility, Evidence each) {
        double early = logAmount(possibility, each, 0.5 + INNER);
        double late = logAmount(possibility, each, 0.5 - INNER);
        double doubt = Math.min(1, DOUBTED * Math.abs(late - early));
        return new Growing(0.5 * (Math.exp(early) + Math.exp(late)), doubt);
    }

    private double logAmount(Possibility possibility, Evidence each, double share) {
        return settled(possibility, each.segment(), each.hours() - share * each.spanHours())
                .logAmount();
    }

    private View view(Possibility possibility, Evidence each, Outlook outlook) {
        return possibility.view(
                outlook,
                possibility.influenceAt(each.hours()),
                timeline.segments().get(each.segment()).settings(),
                each.hours());
    }

    private double log(
            Observation observation, Evidence each, View view, View cupView, double unsettled, boolean error) {
        if (each.saysNothingOfFoam() && (observation instanceof Observation.CupVolume || drifting(observation))) {
            return 0;
        }
        if (observation instanceof Observation.CupVolume) {
            if (error) {
                return ANY_AMOUNT_LOG;
            }
            return each == anchor ? 0 : each.trust() * Likelihood.log(observation, cupView, unsettled);
        }
        if (observation instanceof Observation.FunnelLevel level) {
            return error ? ANY_LEVEL_LOG : each.trust() * Likelihood.level(level, view, each.usualReader());
        }
        double log = Likelihood.log(observation, view, unsettled);
        return drifting(observation) ? each.trust() * log : log;
    }

    private static boolean drifting(Observation observation) {
        return observation instanceof Observation.Darkness
                || observation instanceof Observation.DarknessMatch
                || observation instanceof Observation.FoamLook;
    }

    private Outlook settled(Possibility possibility, int segmentIndex, double hours) {
        Segment segment = timeline.segments().get(segmentIndex);
        return possibility.at(segment, segment.settings().weirCrestMm(), hours, null);
    }

    /** The amount that gathers in the cup over stretches with other settings and over times without settled foam. */
    private Outlook mixed(Possibility possibility, Evidence each, Outlook own, double ownAmount) {
        double ownShare = 1;
        double amount = 0;
        for (Evidence.Earlier earlier : each.earlier()) {
            ownShare -= earlier.share();
            amount += earlier.share()
                    * Math.exp(settled(possibility, earlier.segment(), each.hours())
                            .logAmount());
        }
        amount += Math.max(0, ownShare) * ownAmount;
        amount *= 1 - Belief.UNSETTLED_LOSS * each.unsettled();
        return new Outlook(
                own.submergenceMm(),
                own.outsideMm(),
                own.headMm(),
                Math.log(amount + 1e-6),
                own.darknessPtCo(),
                own.airLitresPerHour(),
                own.flooding());
    }
}
