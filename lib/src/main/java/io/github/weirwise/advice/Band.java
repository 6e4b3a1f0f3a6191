package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;

/** The target's band on the logarithm of the amount, and the amount at which the cup runs over within a day. */
record Band(double low, double high, double overflow) {
    /** Distance from the band's edges at which the day's scatter no longer leaves it. */
    private static final double COMFORTABLE_LOG = 0.55;
    /** What the neck's ordinary film takes off the amount until it is washed; a unit is set a little wet to allow for it. */
    private static final double FILM_LOG = 0.15;

    static Band of(SkimmerUnit unit) {
        double overflow = Math.log(0.9 * unit.cupMl() / unit.target().skimmateMlPerDay());
        return new Band(
                Math.log(Target.AMOUNT_BAND.low()),
                Math.log(Target.AMOUNT_BAND.high()),
                Math.max(overflow, Math.log(Target.AMOUNT_BAND.high()) + 0.2));
    }

    boolean holds(Outlook outlook) {
        return !outlook.flooding() && outlook.logAmount() >= low && outlook.logAmount() <= high;
    }

    /** 1 well inside the band, falling towards its edges, where the next drift would leave it; 0 outside. */
    double comfort(Outlook outlook) {
        if (!holds(outlook)) {
            return 0;
        }
        double toEdge = Math.min(outlook.logAmount() - FILM_LOG - low, high - outlook.logAmount());
        return Math.min(1, 0.7 + 0.3 * Math.max(0, toEdge) / COMFORTABLE_LOG);
    }

    boolean overflows(Outlook outlook) {
        return outlook.flooding() || outlook.logAmount() > overflow;
    }

    /** How far outside the band, 0 inside. */
    double distance(Outlook outlook) {
        return Math.max(0, Math.max(low - outlook.logAmount(), outlook.logAmount() - high));
    }
}
