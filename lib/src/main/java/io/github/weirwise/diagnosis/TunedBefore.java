package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import java.util.EnumSet;

/**
 * A unit that has run for a while was mostly on target before something went wrong with it. So a fault is the likelier an
 * explanation, the nearer to its target the unit would run without it; without this, any fault could be excused by an odd
 * unit. Does not hold for a unit started lately.
 */
final class TunedBefore {
    /** Share of faulty units that were on target before; assumed. */
    private static final double FAULTY_SHARE = 0.75;
    /** Share of units without a fault that are on target; the others have a weir that stands wrong; assumed. */
    private static final double SOUND_SHARE = 0.45;
    /** Spread of the logarithm of the amount among tuned and among untuned units; assumed. */
    private static final double TUNED_LOG = 0.6;

    private static final double UNTUNED_LOG = 2.2;
    private static final double STARTED_WITHIN_HOURS = 30 * 24.0;

    private final Foresight foresight;
    private final Segment start;
    private final boolean holds;

    TunedBefore(Foresight foresight, Timeline timeline) {
        this.foresight = foresight;
        this.start = timeline.segments().get(0);
        double started = timeline.lastHappening(EnumSet.of(Happening.Kind.FIRST_START), 0);
        this.holds = !(started >= -STARTED_WITHIN_HOURS);
    }

    /** Logarithm of the factor on a possibility's weight. */
    double logFactor(Cause cause, Unknowns unknowns) {
        if (!holds || cause == Cause.BREAK_IN) {
            return 0;
        }
        double amount = foresight
                .at(
                        foresight.inputs(start.clean(), start.settings().weirCrestMm(), unknowns, Influence.NONE),
                        unknowns,
                        Influence.NONE)
                .logAmount();
        double share = cause == Cause.NOTHING_WRONG ? SOUND_SHARE : FAULTY_SHARE;
        double tuned = density(amount / TUNED_LOG) / TUNED_LOG;
        double untuned = density(amount / UNTUNED_LOG) / UNTUNED_LOG;
        return Math.log((share * tuned + (1 - share) * untuned) / untuned);
    }

    private static double density(double z) {
        return Math.exp(-0.5 * z * z);
    }
}
