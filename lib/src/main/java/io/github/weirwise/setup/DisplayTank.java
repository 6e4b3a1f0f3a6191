package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The tank that the unit serves, as a box.
 *
 * @param lengthMm inner length, 100 to 20000 mm
 * @param widthMm inner width, 100 to 20000 mm
 * @param floorMm height of its floor over the base on which the filter stands, -3000 to 10000 mm
 * @param crestMm height of the overflow's crest over the tank's own floor, 50 to 5000 mm
 * @param rimMm height of the tank's rim over its own floor, above the crest, to 6000 mm
 * @param waterLitres water in it up to the crest, less rock and sand, 5 L to what the box holds
 * @param dryKilograms tank, rock and sand without water, 0 to 100000 kg
 */
public record DisplayTank(
        double lengthMm,
        double widthMm,
        double floorMm,
        double crestMm,
        double rimMm,
        double waterLitres,
        double dryKilograms) {
    private static final String TRY = "setup.try.measureTheTankAgain";

    private static final Limit LENGTH_MM = Limit.of("lengthMm", 100, 20000, Unit.MILLIMETRE, TRY);
    private static final Limit WIDTH_MM = Limit.of("widthMm", 100, 20000, Unit.MILLIMETRE, TRY);
    private static final Limit FLOOR_MM = Limit.of("floorMm", -3000, 10000, Unit.MILLIMETRE, TRY);
    private static final Limit CREST_MM = Limit.of("crestMm", 50, 5000, Unit.MILLIMETRE, TRY);
    private static final Limit RIM_MM = Limit.of("rimMm", 50, 6000, Unit.MILLIMETRE, TRY);
    private static final Limit WATER_LITRES =
            Limit.of("waterLitres", 5, 2e6, Unit.LITRE, "setup.try.giveTheWaterBelow");
    private static final Limit DRY_KILOGRAMS =
            Limit.of("dryKilograms", 0, 100000, Unit.KILOGRAM, "setup.try.giveTankRockAnd");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public DisplayTank {
        LENGTH_MM.check(lengthMm);
        WIDTH_MM.check(widthMm);
        FLOOR_MM.check(floorMm);
        CREST_MM.check(crestMm);
        RIM_MM.checkFrom(rimMm, crestMm);
        WATER_LITRES.checkTo(waterLitres, lengthMm * widthMm * crestMm / 1e6);
        DRY_KILOGRAMS.check(dryKilograms);
    }

    /** Height of the overflow's crest over the base on which the filter stands. */
    public double crestOverBaseMm() {
        return floorMm + crestMm;
    }

    /** Water in a layer of the tank's surface. */
    public double litresInLayer(double heightMm) {
        return lengthMm * widthMm * heightMm / 1e6;
    }
}
