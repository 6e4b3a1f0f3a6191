package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import java.util.List;

/** Weighs all readings under one possibility after the other, observation by observation. For one thread. */
final class Weighing {
    /** Under a reading error the newest level and amount may be anything a person could write down. */
    private static final double ANY_LEVEL_LOG = Math.log(1.0 / 40);

    private static final double ANY_AMOUNT_LOG = Math.log(1.0 / 6);

    /** Spread of the bias of a reader's eye; assumed. */
    private static final double EYE_MM = 1.5;
    /** Spread of the logarithm of a unit's darkness around what the model gives; assumed. */
    private static final double TONE_LOG = 0.5;

    private final SharedShift usualEye;
    private final SharedShift otherEye;
    private final SharedShift tone;
    private final Timeline timeline;
    private final List<Evidence> evidence;
    private final Evidence anchor;
    private final int observationCount;
    private final Observation[][] observations;
    /** The most that the observations from each reading on can add, at best. */
    private final double[] mostFrom;
    /** The most that each observation can add. */
    private final double[][] most;

    Weighing(Timeline timeline, List<Evidence> evidence, Evidence anchor, int observationCount) {
        this.timeline = timeline;
        this.evidence = evidence;
        this.anchor = anchor;
        this.observationCount = observationCount;
        this.observations = evidence.stream()
                .map(each -> each.reading().observations().toArray(Observation[]::new))
                .toArray(Observation[][]::new);
        this.most = new double[evidence.size()][];
        this.usualEye = new SharedShift(EYE_MM, observationCount);
        this.otherEye = new SharedShift(EYE_MM, observationCount);
        this.tone = new SharedShift(TONE_LOG, observationCount);
        this.mostFrom = new double[evidence.size() + 1];
        for (int i = evidence.size() - 1; i >= 0; i--) {
            most[i] = new double[observations[i].length];
            mostFrom[i] = mostFrom[i + 1];
            for (int k = 0; k < most[i].length; k++) {
                most[i][k] = most(observations[i][k], evidence.get(i));
                mostFrom[i] += most[i][k];
            }
        }
    }

    /**
     * A draft made complete and weighed.
     *
     * @param log logarithm of its weight
     * @param logs logarithms of the likelihoods in the order of the observations; 0 for the amount that the life was solved from
     */
    record Weighed(Possibility possibility, double log, double[] logs) {}

    /** Weighs a draft; null as soon as it is plain that the logarithm of its weight stays below the least. */
    Weighed weigh(Draft draft, double least) {
        Possibility possibility = draft.possibility();
        double[] logs = new double[observationCount];
        View[] views = new View[evidence.size()];
        double[] doubts = new double[evidence.size()];
        usualEye.forget();
        otherEye.forget();
        tone.forget();
        double leeway = 0.5
                * (draft.usualEye() * draft.usualEye()
                        + draft.otherEye() * draft.otherEye()
                        + draft.tone() * draft.tone());
        double sum = draft.logWeight();
        int index = 0;
        CupCourse course = new CupCourse(possibility, timeline);
        for (int i = 0; i < views.length; i++) {
            if (sum + leeway + mostFrom[i] < least) {
                return null;
            }
            Evidence each = evidence.get(i);
            course.goTo(each);
            views[i] = course.view();
            doubts[i] = course.doubt();
            boolean error = error(each, possibility);
            for (int k = 0; k < observations[i].length; k++) {
                Observation observation = observations[i][k];
                if (observation instanceof Observation.FunnelLevel level) {
                    SharedShift eye = each.usualReader() ? usualEye : otherEye;
                    double residual = level.mm() - views[i].outlook().submergenceMm();
                    eye.add(residual, Likelihood.LEVEL_MM, error ? 0 : each.trust());
                    sum += most[i][k];
                } else if (dark(observation)) {
                    addTone(observation, each, views[i], doubts[i]);
                    sum += most[i][k];
                } else {
                    logs[index] = log(observation, each, course, error);
                    sum += logs[index];
                }
                index++;
            }
        }
        Unknowns unknowns = possibility
                .unknowns()
                .withEyes(
                        usualEye.draw(draft.usualEye()),
                        otherEye.draw(draft.otherEye()),
                        Math.exp(tone.draw(draft.tone())));
        shifted(unknowns, views, doubts, error(possibility), logs);
        double log = draft.logWeight() + usualEye.logCorrection() + otherEye.logCorrection() + tone.logCorrection();
        for (double each : logs) {
            log += each;
        }
        return log < least ? null : new Weighed(possibility.withUnknowns(unknowns), log, logs);
    }

    private static boolean error(Evidence each, Possibility possibility) {
        return each.last() && error(possibility);
    }

    private static boolean error(Possibility possibility) {
        return possibility.cause() == Cause.READING_ERROR;
    }

    private void addTone(Observation observation, Evidence each, View view, double doubt) {
        double logAmount = view.outlook().logAmount();
        if (!each.saysNothingOfFoam() && Likelihood.showsDarkness(logAmount)) {
            double residual = Likelihood.logDarkness(observation) - view.logDarknessSeen();
            tone.add(residual, Likelihood.darknessSpread(observation, doubt), each.trust());
        }
    }

    /** Levels and darkness, which hang on who read and on the unit's tone. */
    private void shifted(Unknowns unknowns, View[] views, double[] doubts, boolean error, double[] logs) {
        int index = 0;
        DarknessLogs darkness = new DarknessLogs(unknowns.darknessScale());
        for (int i = 0; i < views.length; i++) {
            Evidence each = evidence.get(i);
            for (Observation observation : observations[i]) {
                if (observation instanceof Observation.FunnelLevel level) {
                    double bias = each.usualReader() ? unknowns.rulerBiasMm() : unknowns.otherBiasMm();
                    double submergenceMm = views[i].outlook().submergenceMm();
                    logs[index] = error && each.last()
                            ? ANY_LEVEL_LOG
                            : each.trust() * Likelihood.level(level, submergenceMm, bias);
                } else if (dark(observation) && !each.saysNothingOfFoam()) {
                    logs[index] = each.trust() * darkness.log(observation, views[i], doubts[i]);
                }
                index++;
            }
        }
    }

    /** Likelihoods of darkness; the same word under the same view as just before is not weighed again. */
    private static final class DarknessLogs {
        private final double scale;
        private Observation observation;
        private View view;
        private double doubt;
        private double log;

        DarknessLogs(double scale) {
            this.scale = scale;
        }

        double log(Observation now, View nowView, double nowDoubt) {
            if (nowView != view || nowDoubt != doubt || !now.equals(observation)) {
                observation = now;
                view = nowView;
                doubt = nowDoubt;
                Outlook outlook = view.outlook();
                log = Likelihood.darkness(observation, outlook.logAmount(), scale * outlook.darknessPtCo(), doubt);
            }
            return log;
        }
    }

    private double log(Observation observation, Evidence each, CupCourse course, boolean error) {
        boolean cup = observation instanceof Observation.CupVolume;
        boolean look = observation instanceof Observation.FoamLook;
        if (each.saysNothingOfFoam() && (cup || look)) {
            return 0;
        }
        if (cup) {
            if (error) {
                return ANY_AMOUNT_LOG;
            }
            return each == anchor ? 0 : each.trust() * Likelihood.log(observation, course.cup(), course.doubt());
        }
        double log = Likelihood.log(observation, course.view(), each.unsettled());
        return look ? each.trust() * log : log;
    }

    /** The most that {@link #log} can give for an observation. */
    private double most(Observation observation, Evidence each) {
        boolean cup = observation instanceof Observation.CupVolume;
        if (each == anchor && cup || each.saysNothingOfFoam() && (cup || drifting(observation))) {
            return 0;
        }
        boolean trusted = cup || drifting(observation) || observation instanceof Observation.FunnelLevel;
        return (trusted ? each.trust() : 1) * Likelihood.most(observation);
    }

    private static boolean drifting(Observation observation) {
        return dark(observation) || observation instanceof Observation.FoamLook;
    }

    private static boolean dark(Observation observation) {
        return observation instanceof Observation.Darkness || observation instanceof Observation.DarknessMatch;
    }
}
