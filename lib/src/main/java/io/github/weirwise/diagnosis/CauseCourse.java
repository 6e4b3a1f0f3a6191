package io.github.weirwise.diagnosis;

import io.github.weirwise.unit.Part;

/**
 * One cause over time: since when, how large, how it grows, passes by itself or ends with a service.
 *
 * @param cause which
 * @param size its full size, 0 to 1
 * @param onsetHours hour at which it began, now is 0
 * @param growthHours a growing cause is at its full size after so long
 */
record CauseCourse(Cause cause, double size, double onsetHours, double growthHours) {
    /** Fades this many times to 1/e in the time after which it counts as passed. */
    private static final double FADED = 2;

    static final CauseCourse NONE = new CauseCourse(Cause.NOTHING_WRONG, 0, 0, 1);

    /** Its size at an hour, 0 where it is not there; services end it. */
    double sizeAt(double hours, Timeline timeline) {
        if (cause == Cause.NOTHING_WRONG || hours < onsetHours) {
            return 0;
        }
        if (cause.serviceable() && ended(cause.servicePart().orElseThrow(), hours, timeline)) {
            return 0;
        }
        return unservicedSize(hours);
    }

    private boolean ended(Part part, double hours, Timeline timeline) {
        return !Double.isNaN(timeline.servicedBetween(part, onsetHours, hours));
    }

    private double unservicedSize(double hours) {
        double age = hours - onsetHours;
        if (cause.passes()) {
            return size * inSteps(Math.exp(-FADED * age / cause.remedy().hours()));
        }
        return size * grown(cause, age, growthHours);
    }

    /** Share of its full size that a cause which does not pass has reached so many hours after it began. */
    static double grown(Cause cause, double age, double growthHours) {
        if (age < 0 || cause.passes()) {
            return 0;
        }
        return cause.growth() == Cause.Growth.DAYS ? inSteps(Math.min(1, age / growthHours)) : 1;
    }

    /** Growth and fading go in twelve steps, so that readings close in time share one look at the model. */
    private static double inSteps(double share) {
        return Math.rint(12 * share) / 12;
    }

    /** The influence of a momentary size; nothing at 0. */
    Influence influence(double momentarySize) {
        if (momentarySize <= 0) {
            return Influence.NONE;
        }
        if (cause.passes()) {
            return faded(momentarySize);
        }
        return cause.effect().at(momentarySize);
    }

    /** Effects start at a least size; a passing cause must fade to nothing, so its full effect is scaled down. */
    private Influence faded(double momentarySize) {
        Influence full = cause.effect().at(size);
        double left = momentarySize / size;
        return Influence.onFoam(
                Math.exp(left * Math.log(full.lifeFactor())), Math.exp(left * Math.log(full.strengthFactor())));
    }
}
