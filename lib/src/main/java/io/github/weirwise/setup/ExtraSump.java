package io.github.weirwise.setup;

import io.github.weirwise.report.Require;

/**
 * A second vessel beside the filter, joined to its media side by a wide pipe low down, so that both stand at one level.
 *
 * @param lengthMm inner length, 50 to 10000 mm
 * @param widthMm inner width, 50 to 10000 mm
 * @param floorMm height of its floor over the base on which the filter stands, -50 to 1000 mm; 0 when level with it
 * @param rimMm height of its rim over the same base
 * @param dryKilograms weight without water, 0 to 5000 kg
 * @since 0.1
 */
public record ExtraSump(double lengthMm, double widthMm, double floorMm, double rimMm, double dryKilograms) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public ExtraSump {
        String measure = "measure the sump again, heights from the base of the filter";
        Require.inRange("lengthMm", lengthMm, 50, 10000, "mm", measure);
        Require.inRange("widthMm", widthMm, 50, 10000, "mm", measure);
        Require.inRange("floorMm", floorMm, -50, 1000, "mm", measure);
        Require.inRange("rimMm", rimMm, floorMm + 10, 4000, "mm", measure);
        Require.inRange("dryKilograms", dryKilograms, 0, 5000, "kg", "give the weight from the data sheet");
    }
}
