package io.github.weirwise.demo.picture;

import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.Layout;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the parts of a unit stand in the drawing, in model millimetres. Heights and bores are the unit's own, and so is where
 * its chamber stands; widths that the unit's data do not tell (chamber, cup, biofilter side) are chosen to look right.
 */
final class Section {
    static final double WALL_MM = 5;
    private static final double PUMP_ROOM_MM = 62;
    private static final double WEIR_ROOM_MM = 42;
    private static final double BETWEEN_COLUMNS_MM = 44;
    private static final double LEFT_MARGIN_MM = 122;
    private static final double CUP_DEPTH_MM = 62;
    private static final double CUP_ABOVE_LIP_MM = 34;
    private static final double CATCH_MM = 30;
    private static final double GAP_MM = 24;
    private static final double SUMP_BELOW_MM = 150;
    private static final int MOST_DRAWN = 3;
    /** How deep the waste container is. */
    static final double CAN_DEEP_MM = 90;
    /** Sea water on a smooth floor lies about so deep; common practice. */
    private static final double PUDDLE_DEEP_MM = 3;

    private static final double PUDDLE_DRAWN_MM = 6;
    private static final double AIR_END_MM = 36;
    private static final double AIR_OVER_WALL_MM = 20;

    private final Column column;
    private final SkimmerUnit unit;
    final List<Double> axesMm;
    final double axisMm;
    final double radiusMm;
    final double chamberRightMm;
    final boolean ownChamber;
    final boolean overSump;
    final double catchRightMm;
    final double beyondLeftMm;
    final double beyondRightMm;
    final double wallTopMm;
    final double beyondWallTopMm;
    final double cupLeftMm;
    final double cupRightMm;
    final double cupFloorMm;
    final double cupTopMm;
    final double plateFootMm;
    final double padTopMm;
    final double padFootMm;
    final double mediaTopMm;
    final double mediaFootMm;
    final double sumpFloorMm;
    final double sumpLevelMm;
    final double canLeftMm = -100;
    final double canRightMm = -30;
    /** The floor of the room. */
    final double floorMm;

    Section(SkimmerUnit unit) {
        this.unit = unit;
        column = unit.column();
        radiusMm = column.boreMm() / 2;
        axisMm = PUMP_ROOM_MM + radiusMm;
        axesMm = IntStream.range(0, Math.min(MOST_DRAWN, unit.columns()))
                .mapToObj(i -> axisMm + i * (column.boreMm() + BETWEEN_COLUMNS_MM))
                .toList();
        double lastAxis = axesMm.get(axesMm.size() - 1);
        chamberRightMm = lastAxis + radiusMm + WEIR_ROOM_MM;
        ownChamber = unit.layout() == Layout.OWN_CHAMBER;
        overSump = unit.layout() == Layout.OVER_SUMP;
        catchRightMm = chamberRightMm + WALL_MM + (ownChamber ? CATCH_MM : 0);
        beyondLeftMm = ownChamber ? catchRightMm + 2 * WALL_MM + GAP_MM : chamberRightMm + WALL_MM;
        beyondRightMm = beyondLeftMm + 128 + 0.6 * column.boreMm();
        wallTopMm = Math.max(unit.weir().highestCrestMm() + 25, column.funnelBaseMm() + 60);
        cupLeftMm = axisMm - radiusMm - 14;
        cupRightMm = lastAxis + radiusMm + 14;
        cupFloorMm = column.lipMm() - Math.min(CUP_DEPTH_MM, column.neckHeightMm() * 0.75);
        cupTopMm = column.lipMm() + CUP_ABOVE_LIP_MM;
        plateFootMm = unit.weir().lowestCrestMm() - 30;
        padTopMm = padTopMm(unit);
        beyondWallTopMm = padTopMm + 62;
        padFootMm = padTopMm - 13;
        mediaTopMm = padFootMm - 16;
        sumpFloorMm = overSump ? -SUMP_BELOW_MM : 0;
        floorMm = sumpFloorMm - WALL_MM;
        mediaFootMm = overSump ? 0.25 * mediaTopMm - 0.5 * SUMP_BELOW_MM : 22;
        sumpLevelMm = overSump ? -0.4 * SUMP_BELOW_MM : mediaFootMm + 0.42 * (mediaTopMm - mediaFootMm);
    }

    /** The filter pad lies a little under the lowest crest. */
    static double padTopMm(SkimmerUnit unit) {
        return unit.weir().lowestCrestMm() - 14;
    }

    Column column() {
        return column;
    }

    double lipMm() {
        return column.lipMm();
    }

    /** Where the wall ends on which the skimmer's chamber stands apart from what lies beyond. */
    double sumpLeftMm() {
        return overSump ? 0 : beyondLeftMm;
    }

    /** Everything that is drawn. */
    Rectangle2D bounds() {
        double left = -LEFT_MARGIN_MM;
        double right = beyondRightMm + WALL_MM + 2;
        double foot = floorMm - PUDDLE_DRAWN_MM - 2;
        double top = cupTopMm + 8;
        return new Rectangle2D.Double(left, foot, right - left, top - foot);
    }

    /** The open end of the air line, over the water. */
    Point2D airEndMm() {
        return new Point2D.Double(AIR_END_MM, wallTopMm + AIR_OVER_WALL_MM);
    }

    /** A round puddle on the floor seen from the side, under the container and as wide as so much water spreads; drawn thicker. */
    Rectangle2D puddle(double litres) {
        double wide = Math.sqrt(4e6 * litres / (Math.PI * PUDDLE_DEEP_MM));
        double middle = (canLeftMm + canRightMm) / 2;
        double left = Math.max(4 - LEFT_MARGIN_MM, middle - wide / 2);
        double right = Math.min(beyondRightMm, middle + wide / 2);
        return new Rectangle2D.Double(left, floorMm - PUDDLE_DRAWN_MM, right - left, PUDDLE_DRAWN_MM);
    }

    /** Inner outline of one column with funnel and neck between two heights, closed. */
    Path2D inside(double axis, double fromMm, double toMm) {
        double[] knees = {
            fromMm,
            clamp(column.funnelBaseMm(), fromMm, toMm),
            clamp(column.funnelBaseMm() + column.funnelHeightMm(), fromMm, toMm),
            toMm
        };
        Path2D path = new Path2D.Double();
        path.moveTo(axis - radiusAt(fromMm), fromMm);
        for (double knee : knees) {
            path.lineTo(axis - radiusAt(knee), knee);
        }
        for (int i = knees.length - 1; i >= 0; i--) {
            path.lineTo(axis + radiusAt(knees[i]), knees[i]);
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
