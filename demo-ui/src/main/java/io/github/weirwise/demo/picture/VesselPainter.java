package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Random;

/** Everything of the cross-section that stands still: walls, water, weir, biofilter side, pump, container. */
final class VesselPainter {
    /** The drain hose runs down between labels and chamber. */
    private static final double HOSE_MM = -13;

    private final Brush brush;
    private final View view;
    private final Section section;
    private final Palette palette;

    VesselPainter(Brush brush) {
        this.brush = brush;
        view = brush.view();
        section = brush.section();
        palette = brush.palette();
    }

    void paint(Ink ink, Scene scene) {
        chamberWater(ink, scene);
        biofilterSide(ink, scene);
        fallingSheet(ink, scene);
        weir(ink, scene);
        walls(ink);
        injector(ink);
        container(ink, scene);
        columnWater(ink, scene);
    }

    private Shape model(Shape shape) {
        return view.transform().createTransformedShape(shape);
    }

    private void chamberWater(Ink ink, Scene scene) {
        double level = Math.max(0, Math.min(section.wallTopMm - 2, scene.point().clearLevelMm()));
        Rectangle2D water = view.box(0, 0, section.chamberRightMm, level);
        ink.fill(
                water,
                new GradientPaint(
                        0, (float) water.getMinY(), palette.water(), 0, (float) water.getMaxY(), palette.deep()));
        ink.line(water.getMinX(), water.getMinY(), water.getMaxX(), water.getMinY(), palette.accent(), 1.4);
    }

    private void columnWater(Ink ink, Scene scene) {
        double level = Math.min(section.lipMm(), Math.max(0, scene.point().columnLevelMm()));
        double opening = section.column().openingMm();
        if (level <= opening) {
            return;
        }
        Color milky = Palette.mix(palette.water(), palette.dark() ? palette.accent() : Color.WHITE, 0.35);
        Shape body = model(section.inside(opening, level));
        Rectangle2D box = body.getBounds2D();
        ink.fill(body, new GradientPaint(0, (float) box.getMinY(), milky, 0, (float) box.getMaxY(), palette.deep()));
    }

    /** The water that goes over the crest, as thick as the head. */
    private void fallingSheet(Ink ink, Scene scene) {
        double crest = trueCrestMm(scene);
        double head = scene.point().headMm();
        if (head < 0.5 || scene.settings().flowLitresPerHour() <= 0) {
            return;
        }
        double left = section.chamberRightMm;
        double pad = padWaterMm(scene);
        double reach = 10 + 0.9 * head;
        double thick = Math.max(1.5, 0.45 * head);
        Path2D sheet = new Path2D.Double();
        sheet.moveTo(left - 14, crest + head);
        sheet.quadTo(left + 2, crest + head, left + Section.WALL_MM + 3, crest + 0.75 * head);
        sheet.quadTo(left + reach, crest + 0.3 * head, left + reach + thick, pad);
        sheet.lineTo(left + reach, pad);
        sheet.quadTo(left + reach - thick, crest, left + Section.WALL_MM, crest);
        sheet.lineTo(left - 14, crest);
        sheet.closePath();
        ink.fill(model(sheet), palette.water());
        Path2D edge = new Path2D.Double();
        edge.moveTo(left - 14, crest + head);
        edge.quadTo(left + 2, crest + head, left + Section.WALL_MM + 3, crest + 0.75 * head);
        edge.quadTo(left + reach, crest + 0.3 * head, left + reach + thick, pad);
        ink.draw(model(edge), palette.accent(), 1.4);
    }

    private static double trueCrestMm(Scene scene) {
        return scene.settings().weirCrestMm() + scene.settings().condition().weirSlipMm();
    }

    /** Water standing on the pad; more of it when the weir is drowned. */
    private double padWaterMm(Scene scene) {
        return Math.max(
                section.padTopMm + 3,
                Math.min(
                        section.beyondWallTopMm - 3,
                        scene.settings().condition().levelBeyondWeirMm()));
    }

    private void weir(Ink ink, Scene scene) {
        double crest = trueCrestMm(scene);
        double left = section.chamberRightMm;
        ink.fill(view.box(left, 0, left + Section.WALL_MM, section.plateFootMm), palette.glass());
        Rectangle2D plate =
                view.box(left, Math.min(section.plateFootMm - 12, crest - 10), left + Section.WALL_MM, crest);
        ink.fill(plate, palette.second());
        double grip = Math.max(9, view.length(9));
        double middle = Math.max(crest - 26, (crest + section.plateFootMm) / 2);
        double x = view.x(left + Section.WALL_MM / 2);
        double y = view.y(middle);
        RoundRectangle2D knob = new RoundRectangle2D.Double(x - grip, y - 1.6 * grip, 2 * grip, 3.2 * grip, 8, 8);
        ink.fill(knob, palette.paper());
        ink.draw(knob, palette.second(), 2);
        ink.arrow(x, y - 2, x, y - grip, palette.second(), 2);
        ink.arrow(x, y + 2, x, y + grip, palette.second(), 2);
    }

    /** Where the weir can be taken hold of. */
    Rectangle2D weirHandle(Scene scene) {
        Rectangle2D plate = view.box(
                section.chamberRightMm - 12,
                section.plateFootMm - 30,
                section.beyondLeftMm + 12,
                trueCrestMm(scene) + 10);
        return plate;
    }

    private void walls(Ink ink) {
        double right = section.beyondRightMm;
        Color wall = palette.glass();
        ink.fill(view.box(-Section.WALL_MM, 0, 0, section.wallTopMm), wall);
        ink.fill(view.box(right, 0, right + Section.WALL_MM, section.beyondWallTopMm), wall);
        ink.fill(view.box(-Section.WALL_MM, -Section.WALL_MM, right + Section.WALL_MM, 0), wall);
    }

    private void biofilterSide(Ink ink, Scene scene) {
        double left = section.beyondLeftMm;
        double right = section.beyondRightMm;
        double pumpRoom = right - 46;
        Rectangle2D water = view.box(left, 0, right, section.sumpLevelMm);
        ink.fill(water, palette.deep());
        media(ink, left + 4, pumpRoom - 8);
        ink.line(water.getMinX(), water.getMinY(), water.getMaxX(), water.getMinY(), palette.accent(), 1.4);
        Rectangle2D standing = view.box(left, section.padTopMm, pumpRoom, padWaterMm(scene));
        ink.fill(standing, palette.water());
        ink.line(standing.getMinX(), standing.getMinY(), standing.getMaxX(), standing.getMinY(), palette.accent(), 1.2);
        pad(ink, left, pumpRoom);
        ink.fill(view.box(pumpRoom, section.mediaFootMm + 24, pumpRoom + 3, section.padTopMm + 34), palette.glass());
        drops(ink, left + 8, pumpRoom - 10);
        returnPump(ink, pumpRoom, right);
    }

    private void pad(Ink ink, double left, double right) {
        Rectangle2D pad = view.box(left, section.padFootMm, right, section.padTopMm);
        ink.fill(pad, palette.pad());
        for (double x = pad.getMinX() + 3; x < pad.getMaxX() - 4; x += 6) {
            ink.line(x, pad.getMaxY() - 2, x + 4, pad.getMinY() + 2, Palette.fade(palette.muted(), 110), 0.8);
        }
        ink.draw(pad, palette.muted(), 1);
        Rectangle2D plate = view.box(left, section.padFootMm - 5, right, section.padFootMm - 2);
        for (double x = plate.getMinX(); x < plate.getMaxX() - 2; x += 9) {
            ink.fill(
                    new Rectangle2D.Double(
                            x, plate.getY(), Math.min(6, plate.getMaxX() - x), Math.max(2, plate.getHeight())),
                    palette.glass());
        }
    }

    private void media(Ink ink, double left, double right) {
        Random random = new Random(11);
        double size = 9;
        for (double z = section.mediaFootMm + size / 2; z < section.mediaTopMm; z += size * 0.92) {
            for (double x = left + size / 2; x < right; x += size * 1.02) {
                double cx = x + 2 * random.nextDouble();
                double cz = z + 2 * random.nextDouble();
                Shape ball = model(new Ellipse2D.Double(cx - size / 2, cz - size / 2, size, size));
                ink.fill(ball, Palette.fade(palette.media(), 200));
                ink.draw(ball, Palette.fade(palette.muted(), 150), 0.8);
            }
        }
        ink.fill(view.box(left - 3, section.mediaFootMm - 5, right + 6, section.mediaFootMm - 2), palette.glass());
    }

    private void drops(Ink ink, double left, double right) {
        for (double x = left; x < right; x += 13) {
            double top = section.padFootMm - 7;
            ink.line(view.x(x), view.y(top), view.x(x), view.y(top - 6), palette.accent(), 1.2);
        }
    }

    private void returnPump(Ink ink, double left, double right) {
        double middle = (left + right) / 2 + 2;
        RoundRectangle2D body = rounded(view.box(middle - 15, 4, middle + 15, 34), 6);
        ink.fill(body, palette.paper());
        ink.draw(body, palette.glass(), 1.6);
        Path2D pipe = new Path2D.Double();
        double bend = section.beyondWallTopMm + 14;
        pipe.moveTo(middle, 34);
        pipe.lineTo(middle, bend - 8);
        pipe.quadTo(middle, bend, middle + 8, bend);
        pipe.lineTo(right + Section.WALL_MM, bend);
        ink.draw(model(pipe), palette.glass(), view.length(10) + 2.4);
        ink.draw(model(pipe), palette.water(), view.length(10));
        ink.arrow(
                view.x(middle),
                view.y(section.padFootMm - 30),
                view.x(middle),
                view.y(section.beyondWallTopMm - 8),
                palette.accent(),
                2);
    }

    private static RoundRectangle2D rounded(Rectangle2D box, double arc) {
        return new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
    }

    /** Pump, nozzle into the column, and the air line up to its open end over the water. */
    private void injector(Ink ink) {
        double wall = section.axisMm - section.radiusMm;
        double z = section.column().openingMm() + 22;
        RoundRectangle2D body = rounded(view.box(7, z - 22, 39, z + 18), 6);
        Path2D air = new Path2D.Double();
        air.moveTo(47, z);
        air.lineTo(47, section.wallTopMm + 8);
        air.quadTo(47, section.wallTopMm + 20, 36, section.wallTopMm + 20);
        ink.draw(model(air), palette.muted(), Math.max(2.5, view.length(3)));
        ink.fill(view.box(39, z - 5, wall + 4, z + 5), palette.paper());
        ink.draw(view.box(39, z - 5, wall + 4, z + 5), palette.glass(), 1.4);
        ink.fill(body, palette.paper());
        ink.draw(body, palette.glass(), 1.6);
        Ellipse2D wheel = new Ellipse2D.Double(view.x(15), view.y(z + 6), view.length(16), view.length(16));
        ink.draw(wheel, palette.glass(), 1.2);
    }

    private void container(Ink ink, Scene scene) {
        double left = -98;
        double right = -28;
        Path2D can = new Path2D.Double();
        can.moveTo(left, 96);
        can.lineTo(left, 2);
        can.quadTo(left, -3, left + 5, -3);
        can.lineTo(right - 5, -3);
        can.quadTo(right, -3, right, 2);
        can.lineTo(right, 96);
        ink.fill(model(can), Palette.fade(palette.paper(), 200));
        ink.draw(model(can), palette.glass(), 1.8);
        Path2D hose = new Path2D.Double();
        double cupLeft = section.axisMm - section.cupRadiusMm;
        double outlet = section.lipMm() - 8;
        hose.moveTo(cupLeft, outlet);
        hose.curveTo(cupLeft - 14, outlet, HOSE_MM, outlet, HOSE_MM, outlet - 50);
        hose.lineTo(HOSE_MM, 150);
        hose.curveTo(HOSE_MM, 120, -44, 130, -44, 100);
        ink.draw(model(hose), palette.muted(), Math.max(2.5, view.length(4)));
        ink.draw(model(hose), palette.paper(), Math.max(1, view.length(2)));
    }

    /** Walls of column, funnel, neck; painted last so that foam and bubbles lie inside. */
    void columnWalls(Ink ink) {
        for (int side = -1; side <= 1; side += 2) {
            Path2D wall = new Path2D.Double();
            double top = section.column().funnelBaseMm() + section.column().funnelHeightMm();
            wall.moveTo(
                    section.axisMm + side * section.radiusMm, section.column().openingMm());
            wall.lineTo(
                    section.axisMm + side * section.radiusMm, section.column().funnelBaseMm());
            wall.lineTo(section.axisMm + side * section.radiusAt(top), top);
            wall.lineTo(section.axisMm + side * section.radiusAt(top), section.lipMm());
            ink.draw(model(wall), palette.glass(), Math.max(2, view.length(2.6)));
        }
        for (int leg = -1; leg <= 1; leg += 2) {
            double x = section.axisMm + leg * (section.radiusMm - 4);
            ink.line(view.x(x), view.y(0), view.x(x), view.y(section.column().openingMm()), palette.glass(), 1.6);
        }
    }

    Brush brush() {
        return brush;
    }
}
