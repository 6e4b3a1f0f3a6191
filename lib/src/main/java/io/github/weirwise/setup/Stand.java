package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.OptionalDouble;

/**
 * What tank and filter stand on.
 *
 * @param ratedKilograms load that its maker allows; empty when nobody knows
 * @param headroomMm clear height over the base on which the filter stands, to the underside of whatever is above, 50 to
 *     20000 mm
 */
public record Stand(OptionalDouble ratedKilograms, double headroomMm) {
    private static final Limit RATED_KILOGRAMS =
            Limit.of("ratedKilograms", 1, 1e6, Unit.KILOGRAM, "setup.try.leaveItEmptyIf");
    private static final Limit HEADROOM_MM =
            Limit.of("headroomMm", 50, 20000, Unit.MILLIMETRE, "setup.try.measureFromTheBase");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Stand {
        if (ratedKilograms.isPresent()) {
            RATED_KILOGRAMS.check(ratedKilograms.getAsDouble());
        }
        HEADROOM_MM.check(headroomMm);
    }
}
