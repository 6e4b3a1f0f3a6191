package io.github.weirwise.setup;

import io.github.weirwise.report.Require;

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
 * @since 0.1
 */
public record DisplayTank(
        double lengthMm,
        double widthMm,
        double floorMm,
        double crestMm,
        double rimMm,
        double waterLitres,
        double dryKilograms) {
    private static final String MEASURE = "measure the tank again, inside and in millimetres";

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public DisplayTank {
        Require.inRange("lengthMm", lengthMm, 100, 20000, "mm", MEASURE);
        Require.inRange("widthMm", widthMm, 100, 20000, "mm", MEASURE);
        Require.inRange("floorMm", floorMm, -3000, 10000, "mm", MEASURE);
        Require.inRange("crestMm", crestMm, 50, 5000, "mm", MEASURE);
        Require.inRange("rimMm", rimMm, crestMm, 6000, "mm", MEASURE);
        Require.inRange(
                "waterLitres",
                waterLitres,
                5,
                lengthMm * widthMm * crestMm / 1e6,
                "L",
                "give the water below the crest, less what rock and sand take up");
        Require.inRange("dryKilograms", dryKilograms, 0, 100000, "kg", "give tank, rock and sand without water");
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
