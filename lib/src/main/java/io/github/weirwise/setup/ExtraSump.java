package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * A second vessel beside the filter, joined to its media side by a wide pipe low down, so that both stand at one level.
 *
 * @param lengthMm inner length, 50 to 10000 mm
 * @param widthMm inner width, 50 to 10000 mm
 * @param floorMm height of its floor over the base on which the filter stands, -50 to 1000 mm; 0 when level with it
 * @param rimMm height of its rim over the same base
 * @param dryKilograms weight without water, 0 to 5000 kg
 */
public record ExtraSump(double lengthMm, double widthMm, double floorMm, double rimMm, double dryKilograms) {
    private static final String TRY = "setup.try.measureTheSumpAgain";

    private static final Limit LENGTH_MM = Limit.of("lengthMm", 50, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit WIDTH_MM = Limit.of("widthMm", 50, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit FLOOR_MM = Limit.of("floorMm", -50, 1000, Unit.MILLIMETRE, TRY);
    private static final Limit RIM_MM = Limit.of("rimMm", -40, 4000, Unit.MILLIMETRE, TRY);
    private static final Limit DRY_KILOGRAMS =
            Limit.of("dryKilograms", 0, 5000, Unit.KILOGRAM, "setup.try.giveTheWeightFrom");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public ExtraSump {
        String measure = "measure the sump again, heights from the base of the filter";
        LENGTH_MM.check(lengthMm);
        WIDTH_MM.check(widthMm);
        FLOOR_MM.check(floorMm);
        RIM_MM.checkFrom(rimMm, floorMm + 10);
        DRY_KILOGRAMS.check(dryKilograms);
    }
}
