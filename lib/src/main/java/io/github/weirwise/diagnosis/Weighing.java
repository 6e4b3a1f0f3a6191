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
        int cachedSegment = -1;
        Influence cachedInfluence = null;
        Outlook outlook = null;
        for (Evidence each : evidence) {
            Influence influence = possibility.influenceAt(each.hours());
            if (cachedSegment != each.segment() || !influence.equals(cachedInfluence)) {
                outlook = settled(possibility, each.segment(), each.hours());
                cachedSegment = each.segment();
                cachedInfluence = influence;
            }
            View view = possibility.view(outlook, each.hours());
            View cupView = each.earlier().isEmpty() && each.unsettled() == 0
                    ? view
                    : possibility.view(mixed(possibility, each, outlook), each.hours());
            boolean error = each.last() && possibility.cause() == Cause.READING_ERROR;
            for (Observation observation : each.reading().observations()) {
                logs[index++] = log(observation, each, view, cupView, error);
            }
        }
        return logs;
    }

    private double log(Observation observation, Evidence each, View view, View cupView, boolean error) {
        if (observation instanceof Observation.CupVolume) {
            if (error) {
                return ANY_AMOUNT_LOG;
            }
            return each == anchor ? 0 : Likelihood.log(observation, cupView, each.unsettled());
        }
        if (observation instanceof Observation.FunnelLevel && error) {
            return ANY_LEVEL_LOG;
        }
        return Likelihood.log(observation, view, each.unsettled());
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
