package io.github.weirwise.setup;

import io.github.weirwise.report.Require;
import java.util.OptionalDouble;

/**
 * What tank and filter stand on.
 *
 * @param ratedKilograms load that its maker allows; empty when nobody knows
 * @param headroomMm clear height over the base on which the filter stands, to the underside of whatever is above, 50 to
 *     20000 mm
 * @since 0.1
 */
public record Stand(OptionalDouble ratedKilograms, double headroomMm) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Stand {
        if (ratedKilograms.isPresent()) {
            Require.inRange(
                    "ratedKilograms", ratedKilograms.getAsDouble(), 1, 1e6, "kg", "leave it empty if it is not known");
        }
        Require.inRange("headroomMm", headroomMm, 50, 20000, "mm", "measure from the base of the filter upward");
    }
}
