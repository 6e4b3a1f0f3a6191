package io.github.weirwise.demo.picture;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Where the parts of a unit stand in the drawing, in model millimetres. Heights are the unit's own; widths that the unit's
 * data do not tell (chamber, cup, biofilter side) are chosen to look right.
 */
final class Section {
    static final double WALL_MM = 5;
    private static final double PUMP_ROOM_MM = 62;
    private static final double WEIR_ROOM_MM = 42;
    private static final double LEFT_MARGIN_MM = 120;
    private static final double CUP_DEPTH_MM = 62;
    private static final double CUP_ABOVE_LIP_MM = 34;

    private final Column column;
    private final SkimmerUnit unit;
    final double axisMm;
    final double radiusMm;
    final double chamberRightMm;
    final double beyondLeftMm;
    final double beyondRightMm;
    final double wallTopMm;
    final double beyondWallTopMm;
    final double cupRadiusMm;
    final double cupFloorMm;
    final double cupTopMm;
    final double plateFootMm;
    final double padTopMm;
    final double padFootMm;
    final double mediaTopMm;
    final double mediaFootMm;
    final double sumpLevelMm;

    Section(SkimmerUnit unit) {
        this.unit = unit;
        column = unit.column();
        radiusMm = column.boreMm() / 2;
        axisMm = PUMP_ROOM_MM + radiusMm;
        chamberRightMm = axisMm + radiusMm + WEIR_ROOM_MM;
        beyondLeftMm = chamberRightMm + WALL_MM;
        beyondRightMm = beyondLeftMm + 86 + column.boreMm();
        wallTopMm = Math.max(unit.weir().highestCrestMm() + 25, column.funnelBaseMm() + 60);
        cupRadiusMm = radiusMm + 14;
        cupFloorMm = column.lipMm() - Math.min(CUP_DEPTH_MM, column.neckHeightMm() * 0.75);
        cupTopMm = column.lipMm() + CUP_ABOVE_LIP_MM;
        plateFootMm = unit.weir().lowestCrestMm() - 30;
        padTopMm = unit.weir().lowestCrestMm() - 14;
        beyondWallTopMm = padTopMm + 62;
        padFootMm = padTopMm - 13;
        mediaTopMm = padFootMm - 16;
        mediaFootMm = 22;
        sumpLevelMm = mediaFootMm + 0.42 * (mediaTopMm - mediaFootMm);
    }

    SkimmerUnit unit() {
        return unit;
    }

    Column column() {
        return column;
    }

    double lipMm() {
        return column.lipMm();
    }

    /** Everything that is drawn. */
    Rectangle2D bounds() {
        double left = -LEFT_MARGIN_MM;
        double right = beyondRightMm + WALL_MM + 2;
        double foot = -WALL_MM - 5;
        double top = cupTopMm + 8;
        return new Rectangle2D.Double(left, foot, right - left, top - foot);
    }

    /** Inner outline of column, funnel and neck between two heights, closed. */
    Path2D inside(double fromMm, double toMm) {
        double[] knees = {
            fromMm,
            clamp(column.funnelBaseMm(), fromMm, toMm),
            clamp(column.funnelBaseMm() + column.funnelHeightMm(), fromMm, toMm),
            toMm
        };
        Path2D path = new Path2D.Double();
        path.moveTo(axisMm - radiusAt(fromMm), fromMm);
        for (double knee : knees) {
            path.lineTo(axisMm - radiusAt(knee), knee);
        }
        for (int i = knees.length - 1; i >= 0; i--) {
            path.lineTo(axisMm + radiusAt(knees[i]), knees[i]);
        }
        path.closePath();
        return path;
    }

    double radiusAt(double heightMm) {
        return column.boreAtMm(heightMm) / 2;
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
