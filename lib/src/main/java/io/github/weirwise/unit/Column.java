package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The bubbly column with its funnel and neck, seen from the side. Heights count from the floor of the skimmer chamber.
 *
 * @param boreMm inner diameter of the column and of the wide end of the funnel, 20 to 600 mm
 * @param openingMm height of the column's lower opening, where it stands in free connection with the chamber, 0 to 1000 mm
 * @param funnelBaseMm height of the wide end of the funnel, above the opening, to 2000 mm
 * @param funnelHeightMm height of the conical part, 5 to 1000 mm
 * @param neckBoreMm inner diameter of the neck, 5 mm to the column's bore
 * @param neckHeightMm straight neck from the end of the cone to the lip, 0 to 1000 mm
 * @since 0.1
 */
public record Column(
        double boreMm,
        double openingMm,
        double funnelBaseMm,
        double funnelHeightMm,
        double neckBoreMm,
        double neckHeightMm) {
    private static final String TRY = "unit.try.measureTheUnitAgain";

    private static final Limit BORE_MM = Limit.of("boreMm", 20, 600, Unit.MILLIMETRE, TRY);
    private static final Limit OPENING_MM = Limit.of("openingMm", 0, 1000, Unit.MILLIMETRE, TRY);
    private static final Limit FUNNEL_BASE_MM = Limit.of("funnelBaseMm", 10, 2000, Unit.MILLIMETRE, TRY);
    private static final Limit FUNNEL_HEIGHT_MM = Limit.of("funnelHeightMm", 5, 1000, Unit.MILLIMETRE, TRY);
    private static final Limit NECK_BORE_MM = Limit.of("neckBoreMm", 5, 600, Unit.MILLIMETRE, TRY);
    private static final Limit NECK_HEIGHT_MM = Limit.of("neckHeightMm", 0, 1000, Unit.MILLIMETRE, TRY);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public Column {
        BORE_MM.check(boreMm);
        OPENING_MM.check(openingMm);
        FUNNEL_BASE_MM.checkFrom(funnelBaseMm, openingMm + 10);
        FUNNEL_HEIGHT_MM.check(funnelHeightMm);
        NECK_BORE_MM.checkTo(neckBoreMm, boreMm);
        NECK_HEIGHT_MM.check(neckHeightMm);
    }

    /** Height of the lip over which foam leaves into the cup. */
    public double lipMm() {
        return funnelBaseMm + funnelHeightMm + neckHeightMm;
    }

    /**
     * Inner diameter at a height: the bore below the funnel, narrowing linearly along it, the neck's bore above.
     *
     * @param heightMm over the chamber floor; any number, never throws
     */
    public double boreAtMm(double heightMm) {
        double along = Math.max(0, Math.min(1, (heightMm - funnelBaseMm) / funnelHeightMm));
        return boreMm + (neckBoreMm - boreMm) * along;
    }
}
