package io.github.weirwise.lab;

import static io.github.weirwise.unit.Part.AIR_LINE;
import static io.github.weirwise.unit.Part.FILTER_PAD;
import static io.github.weirwise.unit.Part.NECK_AND_CUP;
import static io.github.weirwise.unit.Part.SALT_MIX;

import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Target;

/**
 * What a play costs, in days of a badly running skimmer, charged by the hour; frozen (worked by hand in {@code CostTest}).
 *
 * @param trouble out of band, floods, air off, parts left fouled
 * @param work moves, looks, visits asked for, services
 * @param daysOut days of the running mean out of band, flood or not
 * @param floods how often water left cup and drain
 * @param airOffHours hours with the air off by somebody's hand
 */
record Cost(double trouble, double work, double daysOut, int floods, double airOffHours) {
    static final double OUT_A_DAY = 1;
    static final double FLOOD_A_DAY = 3;
    static final double FLOOD_AT_LEAST = 0.5;
    static final double AIR_OFF_A_DAY = 0.5;
    static final double FOULED_PART_A_DAY = 0.1;
    static final double MOVE = 0.1;
    static final double LOOK = 0.1;
    static final double EXTRA_VISIT = 0.1;
    static final double QUICK_SERVICE = 0.2;
    static final double SALT = 0.3;
    static final double LONG_SERVICE = 0.5;
    /** Hours between two floods that still are one event. */
    private static final int ONE_EVENT_HOURS = 6;

    private static final int MEAN_HOURS = 24;

    /** Price of one service. */
    static double ofService(Part part) {
        if (part == NECK_AND_CUP || part == FILTER_PAD || part == AIR_LINE) {
            return QUICK_SERVICE;
        }
        return part == SALT_MIX ? SALT : LONG_SERVICE;
    }

    /** Charges the hours from 0 to the end of a course. */
    static Cost of(Course course, int horizonHours, double work) {
        double trouble = 0;
        double event = 0;
        int floods = 0;
        int lastFlood = Integer.MIN_VALUE / 2;
        int hoursOut = 0;
        int airOff = 0;
        for (int hour = 0; hour < horizonHours; hour++) {
            // The mean of the 24 hours that end with this one; before hour 24 there is none to judge.
            boolean out = hour + 1 > MEAN_HOURS && !inBand(course.mean(hour + 1, MEAN_HOURS));
            hoursOut += out ? 1 : 0;
            if (course.flood(hour)) {
                if (hour - lastFlood > ONE_EVENT_HOURS) {
                    floods++;
                    trouble += Math.max(0, floods > 1 ? FLOOD_AT_LEAST - event : 0);
                    event = 0;
                }
                lastFlood = hour;
                event += FLOOD_A_DAY / 24;
                trouble += FLOOD_A_DAY / 24;
            } else if (out) {
                trouble += OUT_A_DAY / 24;
            }
            if (course.airOff(hour)) {
                airOff++;
                trouble += AIR_OFF_A_DAY / 24;
            }
            trouble += FOULED_PART_A_DAY / 24 * course.fouled(hour);
        }
        trouble += floods > 0 ? Math.max(0, FLOOD_AT_LEAST - event) : 0;
        return new Cost(trouble, work, hoursOut / 24.0, floods, airOff);
    }

    static boolean inBand(double amount) {
        return Target.AMOUNT_BAND.contains(amount);
    }

    double total() {
        return total(1);
    }

    /** The same with the work priced higher or lower. */
    double total(double priceOfWork) {
        return trouble + priceOfWork * work;
    }
}
