package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.picture.View;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** A unit in plain lines, to scale from its measures: chamber and weir, column, funnel, neck and cup. */
public final class UnitSketch {
    private static final double LEFT_MM = 14;
    private static final double CUP_ROOM_MM = 26;

    private final Column column;
    private final double crestMm;
    private final View view;
    private final double axisMm;
    private final double weirMm;
    private final double topMm;

    /** A unit with its crest at a height, as large as fits into an area. */
    public UnitSketch(SkimmerUnit unit, double crestMm, Rectangle2D areaPx) {
        column = unit.column();
        this.crestMm = crestMm;
        double radius = column.boreMm() / 2;
        double cup = Math.max(column.neckBoreMm() * 0.9 + CUP_ROOM_MM, radius + 8);
        axisMm = LEFT_MM + cup;
        weirMm = axisMm + Math.max(cup, radius) + 40;
        topMm = column.lipMm() + 0.9 * CUP_ROOM_MM + 14;
        view = View.fit(new Rectangle2D.Double(-2, -8, weirMm + 34, topMm + 14), areaPx);
    }

    /** Between the unit's millimetres and pixels. */
    public View view() {
        return view;
    }

    /** Where things stand, in pixels: the column's walls, the neck's, the cup's and the weir. */
    public double axisPx() {
        return view.x(axisMm);
    }

    /** The left outside of the column, in pixels. */
    public double columnLeftPx() {
        return view.x(axisMm - column.boreMm() / 2);
    }

    /** The chamber's left wall, in pixels. */
    public double wallPx() {
        return view.x(LEFT_MM - 8);
    }

    /** The right outside of the column, in pixels. */
    public double columnRightPx() {
        return view.x(axisMm + column.boreMm() / 2);
    }

    /** The weir, in pixels. */
    public double weirPx() {
        return view.x(weirMm);
    }

    /** The inside of the cup, in pixels. */
    public Rectangle2D cup() {
        double half = axisMm - LEFT_MM;
        return view.box(axisMm - half, column.lipMm() - 16, axisMm + half, topMm);
    }

    /** Draws the walls, and the water as far as the crest holds it; {@code water} only when a level was read. */
    public void paint(Graphics2D g, Palette palette, boolean water) {
        if (water) {
            g.setColor(Palette.fade(palette.water(), 150));
            g.fill(view.box(LEFT_MM - 8, 0, weirMm, crestMm));
        }
        g.setColor(palette.glass());
        g.setStroke(new BasicStroke(2.2f));
        line(g, LEFT_MM - 8, 0, weirMm + 26, 0);
        line(g, LEFT_MM - 8, 0, LEFT_MM - 8, column.funnelBaseMm());
        g.setStroke(new BasicStroke(2));
        walls(g, palette);
        g.setColor(palette.glass());
        g.setStroke(new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        line(g, weirMm, 0, weirMm, crestMm);
    }

    private void line(Graphics2D g, double x1, double y1, double x2, double y2) {
        g.draw(new Line2D.Double(view.x(x1), view.y(y1), view.x(x2), view.y(y2)));
    }

    private void walls(Graphics2D g, Palette palette) {
        for (int side = -1; side <= 1; side += 2) {
            Path2D wall = new Path2D.Double();
            double bore = axisMm + side * column.boreMm() / 2;
            double neck = axisMm + side * column.neckBoreMm() / 2;
            wall.moveTo(view.x(bore), view.y(column.openingMm()));
            wall.lineTo(view.x(bore), view.y(column.funnelBaseMm()));
            wall.lineTo(view.x(neck), view.y(column.funnelBaseMm() + column.funnelHeightMm()));
            wall.lineTo(view.x(neck), view.y(column.lipMm()));
            g.draw(wall);
            Path2D cup = new Path2D.Double();
            double out = axisMm + side * (axisMm - LEFT_MM);
            cup.moveTo(view.x(neck), view.y(column.lipMm() - 16));
            cup.lineTo(view.x(out), view.y(column.lipMm() - 16));
            cup.lineTo(view.x(out), view.y(topMm));
            g.draw(cup);
        }
        g.setColor(Palette.mix(palette.glass(), Color.GRAY, 0.4));
        g.setStroke(new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0));
        line(
                g,
                axisMm - column.boreMm() / 2 - 14,
                column.funnelBaseMm(),
                axisMm + column.boreMm() / 2 + 14,
                column.funnelBaseMm());
    }
}
