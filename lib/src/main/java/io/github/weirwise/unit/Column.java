package io.github.weirwise.unit;

import io.github.weirwise.report.Require;

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
    private static final String MEASURE = "measure the unit again, all heights from the chamber floor";

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a measure is out of its range
     */
    public Column {
        Require.inRange("boreMm", boreMm, 20, 600, "mm", MEASURE);
        Require.inRange("openingMm", openingMm, 0, 1000, "mm", MEASURE);
        Require.inRange("funnelBaseMm", funnelBaseMm, openingMm + 10, 2000, "mm", MEASURE);
        Require.inRange("funnelHeightMm", funnelHeightMm, 5, 1000, "mm", MEASURE);
        Require.inRange("neckBoreMm", neckBoreMm, 5, boreMm, "mm", MEASURE);
        Require.inRange("neckHeightMm", neckHeightMm, 0, 1000, "mm", MEASURE);
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
