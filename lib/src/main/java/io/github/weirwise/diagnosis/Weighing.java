package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import java.util.List;

/** Weighs all readings under one possibility, observation by observation. */
final class Weighing {
    /** Under a reading error the newest level and amount may be anything a person could write down. */
    private static final double ANY_LEVEL_LOG = Math.log(1.0 / 40);

    private static final double ANY_AMOUNT_LOG = Math.log(1.0 / 6);

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
            View cupView = each.earlier().isEmpty() && each.unsettled() == 0
                    ? view
                    : view(possibility, each, mixed(possibility, each, view.outlook()));
            boolean error = each.last() && possibility.cause() == Cause.READING_ERROR;
            for (Observation observation : each.reading().observations()) {
                logs[index++] = log(observation, each, view, cupView, error);
            }
        }
        return logs;
    }

    private View view(Possibility possibility, Evidence each, Outlook outlook) {
        return possibility.view(
                outlook,
                possibility.influenceAt(each.hours()),
                timeline.segments().get(each.segment()).settings(),
                each.hours());
    }

    private double log(Observation observation, Evidence each, View view, View cupView, boolean error) {
        if (each.saysNothingOfFoam() && (observation instanceof Observation.CupVolume || drifting(observation))) {
            return 0;
        }
        if (observation instanceof Observation.CupVolume) {
            if (error) {
                return ANY_AMOUNT_LOG;
            }
            return each == anchor ? 0 : each.trust() * Likelihood.log(observation, cupView, each.unsettled());
        }
        if (observation instanceof Observation.FunnelLevel level) {
            return error ? ANY_LEVEL_LOG : each.trust() * Likelihood.level(level, view, each.usualReader());
        }
        double log = Likelihood.log(observation, view, each.unsettled());
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
    private Outlook mixed(Possibility possibility, Evidence each, Outlook own) {
        double ownShare = 1;
        double amount = 0;
        for (Evidence.Earlier earlier : each.earlier()) {
            ownShare -= earlier.share();
            amount += earlier.share()
                    * Math.exp(settled(possibility, earlier.segment(), each.hours())
                            .logAmount());
        }
        amount += Math.max(0, ownShare) * Math.exp(own.logAmount());
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
