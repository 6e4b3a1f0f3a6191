package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.skimmer.SteadyInputs;

/**
 * Draws one possibility after the other and gives it the logarithm of its weight before the other readings.
 *
 * <p>The foam's life is the one unknown to which the amount is so sensitive that blind draws would nearly all be wasted.
 * So where a measured amount is at hand, the life is not drawn but solved from it (with the reading's own scatter), and
 * the weight is the prior density of that life times the slope of life against amount: importance sampling with the
 * reading's likelihood as proposal.
 */
final class Sampler {
    /** Spread of the logarithm of a unit's life around its nominal value; wide, {@link SheetTrust} says more. */
    private static final double LIFE_LOG = 0.35;

    private static final double SHAPE_LOG = 0.7;
    private static final double SHAPE_MEDIAN = 0.35;
    private static final double RESPONSE_LOG = 0.35;
    private static final double AIR_LOG = 0.08;
    private static final double FLOW_LOG = 0.06;
    private static final double CREST_MM = 1.2;
    private static final double RULER_MM = 1.5;
    private static final double DARKNESS_LOG = 0.5;
    private static final double WEIGHT_SPREAD = 0.12;
    private static final double ANCHOR_LOG = 0.33;
    private static final double PAIR_SHARE = 0.07;
    private static final double BEFORE_JOURNAL_SHARE = 0.6;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private final Foresight foresight;
    private final Timeline timeline;
    private final CausePrior prior;
    private final Evidence anchor;
    private final double anchorLog;
    private final SheetTrust sheetTrust;
    private double logWeight;

    /**
     * @param anchor the reading with the measured amount to solve the life from, or null
     */
    Sampler(Foresight foresight, Timeline timeline, CausePrior prior, Evidence anchor) {
        this.foresight = foresight;
        this.timeline = timeline;
        this.prior = prior;
        this.anchor = anchor;
        this.sheetTrust = new SheetTrust(foresight, timeline);
        this.anchorLog = anchor == null
                ? 0
                : Math.log(anchor.reading()
                                .find(Observation.CupVolume.class)
                                .orElseThrow()
                                .mlPerDay()
                        / foresight.unit().target().skimmateMlPerDay());
    }

    /** The possibility that a point of the cube stands for; its weight is 1 and its logarithm of the weight in {@link #logWeight}. */
    Possibility at(double[] point) {
        Coordinates draw = new Coordinates(point);
        int index = prior.pick(draw.uniform());
        logWeight = prior.logCorrection(index);
        CauseCourse first = course(prior.cause(index), draw.uniform(), draw.uniform());
        CauseCourse second = second(first.cause(), draw.uniform(), draw.uniform(), draw.uniform());
        Unknowns unknowns = new Unknowns(
                1,
                1 + SHAPE_MEDIAN * Math.exp(SHAPE_LOG * draw.normal()),
                0.9 * Math.exp(RESPONSE_LOG * draw.normal()),
                Math.exp(AIR_LOG * draw.normal()),
                Math.exp(FLOW_LOG * draw.normal()),
                CREST_MM * draw.normal(),
                Math.min(0.6, Math.abs(WEIGHT_SPREAD * draw.normal())),
                RULER_MM * draw.normal(),
                RULER_MM * draw.normal(),
                Math.exp(DARKNESS_LOG * draw.normal()));
        double lifeNormal = draw.normal();
        Unknowns complete = unknowns.withLifeScale(lifeScale(first, second, unknowns, lifeNormal));
        logWeight += sheetTrust.logFactor(first.cause(), complete);
        return new Possibility(foresight, timeline, first, second, complete, 1);
    }

    double logWeight() {
        return logWeight;
    }

    private double lifeScale(CauseCourse first, CauseCourse second, Unknowns unknowns, double normal) {
        boolean distrusted = anchor != null && anchor.last() && first.cause() == Cause.READING_ERROR;
        if (anchor == null || distrusted) {
            return Math.exp(LIFE_LOG * normal);
        }
        Possibility unscaled = new Possibility(foresight, timeline, first, second, unknowns, 1);
        Segment segment = timeline.segments().get(anchor.segment());
        SteadyInputs inputs = unscaled.inputs(segment, anchor.hours());
        double settled = anchorLog - Math.log(1 - Belief.UNSETTLED_LOSS * anchor.unsettled());
        double logLaw = (settled + ANCHOR_LOG * normal) / unknowns.responseScale();
        Foresight.LifeFit fit = foresight.lifeFor(inputs, logLaw);
        double logScale = Math.log(fit.seconds() / inputs.meanLifeS());
        double z = logScale / LIFE_LOG;
        logWeight += -0.5 * z * z + Math.log(fit.slope() / (unknowns.responseScale() * LIFE_LOG * ROOT_TWO_PI));
        return Math.max(0.05, Math.min(20, Math.exp(logScale)));
    }

    private CauseCourse second(Cause first, double pair, double which, double size) {
        if (pair > PAIR_SHARE) {
            return CauseCourse.NONE;
        }
        Cause cause = prior.cause(prior.pick(which));
        boolean sensible = cause != first && cause.serviceable() && first != Cause.NOTHING_WRONG;
        return sensible ? course(cause, size, pair / PAIR_SHARE) : CauseCourse.NONE;
    }

    private CauseCourse course(Cause cause, double size, double when) {
        return cause == Cause.NOTHING_WRONG ? CauseCourse.NONE : new CauseCourse(cause, size, onset(cause, when));
    }

    private double onset(Cause cause, double when) {
        double herald = CausePrior.heraldHours(cause, timeline);
        if (!Double.isNaN(herald) && cause.passes()) {
            return herald;
        }
        double start = timeline.startHours();
        if (cause == Cause.LOW_LOAD || cause == Cause.HIGH_LOAD) {
            // A load is a state of the tank, not an event.
            return start - 240;
        }
        if (cause.passes()) {
            return start - cause.remedy().hours() + when * (cause.remedy().hours() - start);
        }
        if (when < BEFORE_JOURNAL_SHARE || start > -12) {
            return start - 240 * (1 - when);
        }
        return start * (1 - (when - BEFORE_JOURNAL_SHARE) / (1 - BEFORE_JOURNAL_SHARE));
    }
}
