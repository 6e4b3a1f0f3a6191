package io.github.weirwise.unit;

import io.github.weirwise.report.Require;

/**
 * The adjustable overflow weir between the skimmer chamber and the biofilter side.
 *
 * @param widthMm width of the crest, 10 to 2000 mm
 * @param channelWidthMm width of the channel that leads to it, at least the crest's width; equal for a weir without side
 *     contraction
 * @param lowestCrestMm lowest crest that can be set, over the chamber floor
 * @param highestCrestMm highest crest that can be set
 * @since 0.1
 */
public record Weir(double widthMm, double channelWidthMm, double lowestCrestMm, double highestCrestMm) {
    private static final String MEASURE = "measure the weir again, heights from the chamber floor";

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public Weir {
        Require.inRange("widthMm", widthMm, 10, 2000, "mm", MEASURE);
        Require.inRange("channelWidthMm", channelWidthMm, widthMm, 4000, "mm", MEASURE);
        Require.inRange("lowestCrestMm", lowestCrestMm, 1, 2000, "mm", MEASURE);
        Require.inRange("highestCrestMm", highestCrestMm, lowestCrestMm, 2000, "mm", MEASURE);
    }

    /**
     * The crest setting nearest to the wanted one that the weir can take.
     *
     * @param crestMm wanted height over the chamber floor, mm; any number, never throws
     */
    public double clampMm(double crestMm) {
        return Math.max(lowestCrestMm, Math.min(highestCrestMm, crestMm));
    }
}
