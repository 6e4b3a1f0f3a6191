package io.github.weirwise.trial;

import io.github.weirwise.unit.Part;

/** One hidden cause in one tank over time; hours count from the start of the trial. */
final class Ailment {
    /** Smaller than this nobody has to deal with it. */
    static final double MATTERS = 0.25;

    /** A passing cause this small has passed. */
    static final double PASSED = 0.06;

    private static final double HOURS_UNTIL_SALT_IS_MIXED = 10;

    private final HiddenCause kind;
    private final double sizeAtStart;
    private final double onsetHour;
    private final double growthPerDay;
    private final double fadeHours;
    private final double variant;
    private double clearedHour = Double.POSITIVE_INFINITY;

    Ailment(
            HiddenCause kind,
            double sizeAtStart,
            double onsetHour,
            double growthPerDay,
            double fadeHours,
            double variant) {
        this.kind = kind;
        this.sizeAtStart = sizeAtStart;
        this.onsetHour = onsetHour;
        this.growthPerDay = growthPerDay;
        this.fadeHours = fadeHours;
        this.variant = variant;
    }

    /** The same cause as if nobody had touched it. */
    Ailment fresh() {
        return new Ailment(kind, sizeAtStart, onsetHour, growthPerDay, fadeHours, variant);
    }

    HiddenCause kind() {
        return kind;
    }

    double onsetHour() {
        return onsetHour;
    }

    double size(double hour) {
        if (hour < onsetHour) {
            return 0;
        }
        if (hour >= clearedHour) {
            return kind == HiddenCause.SALT
                    ? sizeUncleared(clearedHour) * Math.exp(-(hour - clearedHour) / HOURS_UNTIL_SALT_IS_MIXED)
                    : 0;
        }
        return sizeUncleared(hour);
    }

    private double sizeUncleared(double hour) {
        return switch (kind.course()) {
            case SETTING -> 0;
            case GROWING ->
                hour >= 0
                        ? Math.min(1, sizeAtStart + growthPerDay * hour / 24)
                        : sizeAtStart * (hour - onsetHour) / Math.max(1, -onsetHour);
            case SUDDEN, LASTING -> sizeAtStart;
            case PASSING -> Math.min(1.3, sizeAtStart * Math.exp(-hour / fadeHours));
        };
    }

    void act(double hour, Strain on) {
        double size = size(hour);
        if (size > 0.004) {
            kind.act(size, variant, on);
        }
    }

    /** Whether it has to be dealt with by a service. */
    boolean wantsService(double hour) {
        return kind.serviceable() && clearedHour == Double.POSITIVE_INFINITY && size(hour) > MATTERS;
    }

    /** Whether it is a passing cause that still acts. */
    boolean passing(double hour) {
        return kind.course() == HiddenCause.Course.PASSING && size(hour) > PASSED;
    }

    void service(Part part, double hour) {
        if (kind.part().filter(part::equals).isPresent() && hour >= onsetHour) {
            clearedHour = Math.min(clearedHour, hour);
        }
    }

    @Override
    public String toString() {
        return kind.cause() + String.format(" %.2f", sizeAtStart);
    }
}
