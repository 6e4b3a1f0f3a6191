package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

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
    private static final String TRY = "unit.try.measureTheWeirAgain";

    private static final Limit WIDTH_MM = Limit.of("widthMm", 10, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit CHANNEL_WIDTH_MM = Limit.of("channelWidthMm", 10, 4000, Unit.MILLIMETRE, TRY);
    private static final Limit LOWEST_CREST_MM = Limit.of("lowestCrestMm", 1, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit HIGHEST_CREST_MM = Limit.of("highestCrestMm", 1, 2000, Unit.MILLIMETRE, TRY);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public Weir {
        WIDTH_MM.check(widthMm);
        CHANNEL_WIDTH_MM.checkFrom(channelWidthMm, widthMm);
        LOWEST_CREST_MM.check(lowestCrestMm);
        HIGHEST_CREST_MM.checkFrom(highestCrestMm, lowestCrestMm);
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
