package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.SteadyInputs;
import java.util.EnumMap;
import java.util.Map;

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
    private static final double LIFE_LOG = 0.5;

    private static final double SHAPE_LOG = 0.7;
    static final double SHAPE_MEDIAN = 0.35;
    private static final double RESPONSE_LOG = 0.35;
    private static final double AIR_LOG = 0.08;
    private static final double FLOW_LOG = 0.06;
    private static final double CREST_MM = 1.2;
    /** Spread of the logarithm of the bubbles' rise: their size is not known to a fifth, nor how crowded they rise; assumed. */
    private static final double RISE_LOG = 0.25;

    private static final double WEIGHT_SPREAD = 0.22;
    private static final double ANCHOR_LOG = 0.33;
    /** Spread of draws around an amount that only says about where to draw. */
    private static final double LOOSE_LOG = 1.0;

    private static final double PAIR_SHARE = 0.12;
    /** A growing cause takes between half a day and ten days to its full size; assumed. */
    private static final double SHORTEST_GROWTH_HOURS = 12;

    private static final double LONGEST_OVER_SHORTEST = 20;

    /** A cause smaller than this nobody notices. */
    private static final double LEAST_SIZE = 0.15;
    /** Share of sizes that are drawn near where a direct sign puts them. */
    private static final double HINTED = 0.8;
    /** Scale of a logistic law over the standard deviation of a normal law, a little wide. */
    private static final double LOGISTIC = 0.65;
    /** A sign that asks for a size this far outside 0 to 1 says nothing of the size. */
    private static final double FAR_SIZE = 0.3;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private final Foresight foresight;
    private final Timeline timeline;
    private final CausePrior prior;
    private final Map<Cause, DirectSigns.Hint> hints = new EnumMap<>(Cause.class);
    private final Onsets onsets;
    private final Anchor anchor;
    private final SheetTrust sheetTrust;
    private double logWeight;

    /**
     * @param anchor the measured amount to solve the life from, or null
     */
    Sampler(Foresight foresight, Timeline timeline, CausePrior prior, DirectSigns signs, Anchor anchor) {
        for (Cause cause : Cause.values()) {
            DirectSigns.Hint hint = signs.hint(cause);
            if (hint != null) {
                hints.put(cause, hint);
            }
        }
        this.foresight = foresight;
        this.timeline = timeline;
        this.prior = prior;
        this.onsets = new Onsets(foresight.unit(), timeline);
        this.anchor = anchor;
        this.sheetTrust = new SheetTrust(foresight, timeline);
    }

    /** What a point of the cube stands for, but for the readers' eyes and the darkness. */
    Draft at(double[] point) {
        Coordinates draw = new Coordinates(point);
        int index = prior.pick(draw.uniform());
        logWeight = prior.logCorrection(index);
        double size = draw.uniform();
        double when = draw.uniform();
        double growthHours = SHORTEST_GROWTH_HOURS * Math.pow(LONGEST_OVER_SHORTEST, draw.uniform());
        CauseCourse first = course(prior.cause(index), size, when, growthHours);
        CauseCourse second = second(first.cause(), draw.uniform(), draw.uniform(), draw.uniform(), growthHours);
        Unknowns unknowns = new Unknowns(
                1,
                1 + SHAPE_MEDIAN * Math.exp(SHAPE_LOG * draw.normal()),
                Math.exp(RESPONSE_LOG * draw.normal()),
                Math.exp(AIR_LOG * draw.normal()),
                Math.exp(FLOW_LOG * draw.normal()),
                CREST_MM * draw.normal(),
                Math.exp(RISE_LOG * draw.normal()),
                Math.min(0.6, Math.abs(WEIGHT_SPREAD * draw.normal())),
                0,
                0,
                1);
        double usualEye = draw.normal();
        double otherEye = draw.normal();
        double tone = draw.normal();
        double lifeNormal = draw.normal();
        Unknowns complete = unknowns.withLifeScale(lifeScale(first, second, unknowns, lifeNormal));
        logWeight += sheetTrust.logFactor(first.cause(), complete);
        Possibility possibility = new Possibility(foresight, timeline, first, second, complete, 1);
        return new Draft(possibility, logWeight, usualEye, otherEye, tone);
    }

    private double lifeScale(CauseCourse first, CauseCourse second, Unknowns unknowns, double normal) {
        boolean distrusted = anchor != null && anchor.evidence().last() && first.cause() == Cause.READING_ERROR;
        if (anchor == null || distrusted) {
            return healthyLifeScale(unknowns, normal);
        }
        Possibility unscaled = new Possibility(foresight, timeline, first, second, unknowns, 1);
        Evidence reading = anchor.evidence();
        Segment segment = timeline.segments().get(reading.segment());
        SteadyInputs inputs = unscaled.inputs(segment, reading.hours() - 0.5 * reading.spanHours());
        double spread = anchor.exact() ? ANCHOR_LOG : LOOSE_LOG;
        double logLaw = (anchor.logAmount() + spread * normal) / unknowns.responseScale();
        Foresight.LifeFit fit = foresight.lifeFor(inputs, logLaw);
        double logScale = Math.log(fit.seconds() / inputs.meanLifeS());
        logWeight += lifeLog(logScale) + Math.log(fit.slope() / unknowns.responseScale());
        if (!anchor.exact()) {
            // The reading itself is weighed later, so the draw must not count for it.
            logWeight += 0.5 * normal * normal + Math.log(LOOSE_LOG * ROOT_TWO_PI);
        }
        return Math.max(0.05, Math.min(20, Math.exp(logScale)));
    }

    /** Without a measured amount to lean on, the life is solved from what a unit without any fault usually gives. */
    private double healthyLifeScale(Unknowns unknowns, double normal) {
        double healthyLog = sheetTrust.drawHealthyLog(normal);
        SteadyInputs inputs = sheetTrust.healthyInputs(unknowns);
        Foresight.LifeFit fit = foresight.lifeFor(inputs, healthyLog / unknowns.responseScale());
        double logScale = Math.log(fit.seconds() / inputs.meanLifeS());
        logWeight += lifeLog(logScale)
                + Math.log(fit.slope() / unknowns.responseScale())
                - sheetTrust.healthyLogDensity(healthyLog);
        return Math.max(0.05, Math.min(20, Math.exp(logScale)));
    }

    /** Logarithm of the prior density of the logarithm of the life over its nominal value. */
    private static double lifeLog(double logScale) {
        double z = logScale / LIFE_LOG;
        return -0.5 * z * z - Math.log(LIFE_LOG * ROOT_TWO_PI);
    }

    private CauseCourse second(Cause first, double pair, double which, double size, double growthHours) {
        if (pair > PAIR_SHARE) {
            return CauseCourse.NONE;
        }
        Cause cause = prior.cause(prior.pick(which));
        boolean sensible = cause != first && cause.serviceable() && first != Cause.NOTHING_WRONG;
        return sensible ? course(cause, size, pair / PAIR_SHARE, growthHours) : CauseCourse.NONE;
    }

    private CauseCourse course(Cause cause, double size, double when, double growthHours) {
        if (cause == Cause.NOTHING_WRONG) {
            return CauseCourse.NONE;
        }
        double onset = onset(cause, when);
        double share = size(cause, size, onset, growthHours);
        return new CauseCourse(cause, LEAST_SIZE + (1 - LEAST_SIZE) * share, onset, growthHours);
    }

    /** Share of the way from the least size to 1, from a uniform number: mostly near where a direct sign puts it, with the weight that takes this back. */
    private double size(Cause cause, double uniform, double onset, double growthHours) {
        DirectSigns.Hint hint = hints.get(cause);
        double grown = hint == null ? 0 : CauseCourse.grown(cause, hint.hours() - onset, growthHours);
        if (grown <= 0 || hint.size() / grown > 1 + FAR_SIZE || hint.size() / grown < -FAR_SIZE) {
            return uniform;
        }
        // A logistic law cut to 0 to 1: its quantiles and densities are plain formulas that belong together.
        double middle = (hint.size() / grown - LEAST_SIZE) / (1 - LEAST_SIZE);
        double scale = Math.max(0.02, LOGISTIC * hint.spread() / grown / (1 - LEAST_SIZE));
        double from = logistic((0 - middle) / scale);
        double to = logistic((1 - middle) / scale);
        double size = uniform < HINTED
                ? middle + scale * logit(from + uniform / HINTED * (to - from))
                : (uniform - HINTED) / (1 - HINTED);
        size = Math.max(0, Math.min(1, size));
        double at = logistic((size - middle) / scale);
        logWeight -= Math.log(HINTED * at * (1 - at) / (scale * (to - from)) + 1 - HINTED);
        return size;
    }

    private static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }

    private static double logit(double share) {
        return Math.log(share / (1 - share));
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
        double at = onsets.hour(when);
        logWeight += onsets.logCorrection(at);
        return at;
    }
}
