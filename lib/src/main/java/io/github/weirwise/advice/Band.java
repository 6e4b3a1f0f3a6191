package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.Outlook;
import io.github.weirwise.skimmer.SkimmerUnit;
import io.github.weirwise.skimmer.Target;

/** The target's band on the logarithm of the amount, and the amount at which the cup runs over within a day. */
record Band(double low, double high, double overflow) {
    private static final double COMFORTABLE_LOG = 0.4;

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
        double toEdge = Math.min(outlook.logAmount() - low, high - outlook.logAmount());
        return Math.min(1, 0.7 + 0.3 * toEdge / COMFORTABLE_LOG);
    }

    boolean overflows(Outlook outlook) {
        return outlook.flooding() || outlook.logAmount() > overflow;
    }

    /** How far outside the band, 0 inside. */
    double distance(Outlook outlook) {
        return Math.max(0, Math.max(low - outlook.logAmount(), outlook.logAmount() - high));
    }
}
