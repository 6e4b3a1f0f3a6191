package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Random;

/** Everything of the cross-section that stands still: walls, water, weir, biofilter side, pump, container. */
final class VesselPainter extends Painter {
    /** The drain hose runs down between labels and chamber. */
    private static final double HOSE_MM = -13;
    /** Water in the box that catches what comes over the weir, where the chamber stands apart. */
    private static final double CATCH_LEVEL_MM = 44;

    private static final double PIPE_MM = 20;

    private final FilterPainter filter;

    VesselPainter(Brush brush) {
        super(brush);
        filter = new FilterPainter(brush);
    }

    void paint(Ink ink, Scene scene, Sight sight) {
        chamberWater(ink, scene);
        filter.paint(ink, scene, sight);
        fallingSheet(ink, scene);
        weir(ink, scene);
        walls(ink);
        injector(ink, sight);
        if (scene.collected().waste().isPresent()
                || scene.unit().cupDrainLitresPerHour().isPresent()) {
            container(ink, scene, sight);
        }
        puddle(ink, scene);
        section.axesMm.forEach(axis -> columnWater(ink, scene, axis));
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

    private void columnWater(Ink ink, Scene scene, double axis) {
        double level = Math.min(section.lipMm(), Math.max(0, scene.point().columnLevelMm()));
        double opening = section.column().openingMm();
        if (level <= opening) {
            return;
        }
        Color milky = Palette.mix(palette.water(), palette.dark() ? palette.accent() : Color.WHITE, 0.35);
        Shape body = model(section.inside(axis, opening, level));
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
        double pad = section.ownChamber ? CATCH_LEVEL_MM : filter.padWaterMm(scene);
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
        double right = section.chamberRightMm + Section.WALL_MM;
        Color wall = palette.glass();
        ink.fill(view.box(-Section.WALL_MM, 0, 0, section.wallTopMm), wall);
        ink.fill(view.box(-Section.WALL_MM, -Section.WALL_MM, right, 0), wall);
        if (section.ownChamber) {
            catchBox(ink);
        }
    }

    /** A narrow box behind the weir of a chamber that stands apart, and the pipe from it over to the filter. */
    private void catchBox(Ink ink) {
        double left = section.chamberRightMm + Section.WALL_MM;
        double right = section.catchRightMm;
        double over = section.beyondLeftMm + 14;
        ink.fill(view.box(left, 0, right, CATCH_LEVEL_MM), palette.water());
        ink.fill(view.box(left, -Section.WALL_MM, right + Section.WALL_MM, 0), palette.glass());
        ink.fill(view.box(right, 0, right + Section.WALL_MM, section.beyondWallTopMm), palette.glass());
        double top = section.padTopMm + 22;
        Path2D pipe = new Path2D.Double();
        pipe.moveTo(right - 6, PIPE_MM);
        pipe.lineTo(right + Section.WALL_MM + 9, PIPE_MM);
        pipe.lineTo(right + Section.WALL_MM + 9, top);
        pipe.lineTo(over, top);
        pipe.lineTo(over, section.padTopMm + 6);
        ink.draw(model(pipe), palette.glass(), view.length(10) + 2.4);
        ink.draw(model(pipe), palette.water(), view.length(10));
    }

    /** Pump, nozzle into the column, and the air line up to its open end over the water. */
    private void injector(Ink ink, Sight sight) {
        double wall = section.axisMm - section.radiusMm;
        double z = section.column().openingMm() + 22;
        RoundRectangle2D body = FilterPainter.rounded(view.box(7, z - 22, 39, z + 18), 6);
        Path2D air = new Path2D.Double();
        air.moveTo(47, z);
        Point2D end = section.airEndMm();
        air.lineTo(47, end.getY() - 12);
        air.quadTo(47, end.getY(), end.getX(), end.getY());
        ink.draw(model(air), palette.muted(), Math.max(2.5, view.length(3)));
        ink.fill(view.box(39, z - 5, wall + 4, z + 5), palette.paper());
        ink.draw(view.box(39, z - 5, wall + 4, z + 5), palette.glass(), 1.4);
        ink.fill(body, palette.paper());
        ink.draw(body, palette.glass(), 1.6);
        Ellipse2D wheel = new Ellipse2D.Double(view.x(15), view.y(z + 6), view.length(16), view.length(16));
        ink.draw(wheel, palette.glass(), 1.2);
        saltCrust(ink, sight);
    }

    /** Hose and container of a cup with a drain; a shut one has its tap across. */
    private void container(Ink ink, Scene scene, Sight sight) {
        double left = section.canLeftMm;
        double right = section.canRightMm;
        double foot = section.floorMm;
        double outlet = section.cupFloorMm + 5;
        Path2D hose = new Path2D.Double();
        hose.moveTo(section.cupLeftMm, outlet);
        hose.curveTo(section.cupLeftMm - 14, outlet, HOSE_MM, outlet, HOSE_MM, outlet - 50);
        hose.lineTo(HOSE_MM, foot + 155);
        hose.curveTo(HOSE_MM, foot + 125, -44, foot + 135, -44, foot + 105);
        ink.draw(model(hose), palette.muted(), Math.max(2.5, view.length(4)));
        ink.draw(model(hose), palette.paper(), Math.max(1, view.length(2)));
        scene.collected()
                .waste()
                .ifPresentOrElse(
                        waste -> {
                            double full = Math.min(1, waste.ml() / waste.capacityMl());
                            ink.fill(
                                    view.box(left, foot, right, foot + full * Section.CAN_DEEP_MM),
                                    SkimmateColour.of(waste.ptCo()));
                        },
                        () -> {
                            double x = view.x(section.cupLeftMm - 9);
                            ink.line(x, view.y(outlet) - 7, x, view.y(outlet) + 7, palette.second(), 3);
                        });
        double top = foot + Section.CAN_DEEP_MM + 6;
        Path2D can = new Path2D.Double();
        can.moveTo(left, top);
        can.lineTo(left, foot + 5);
        can.quadTo(left, foot, left + 5, foot);
        can.lineTo(right - 5, foot);
        can.quadTo(right, foot, right, foot + 5);
        can.lineTo(right, top);
        boolean full = sight.alarms().contains(Sight.Alarm.CONTAINER_FULL);
        ink.draw(model(can), full ? palette.danger() : palette.glass(), full ? 3 : 1.8);
    }

    /** What lies on the floor, as wide as it spreads. */
    private void puddle(Ink ink, Scene scene) {
        double litres = scene.collected().spilledLitres();
        Rectangle2D puddle = section.puddle(litres);
        if (puddle.getWidth() < 1) {
            return;
        }
        Rectangle2D box = view.box(puddle.getMinX(), puddle.getMinY(), puddle.getMaxX(), puddle.getMaxY());
        RoundRectangle2D drawn = FilterPainter.rounded(box, box.getHeight());
        ink.fill(
                drawn,
                Palette.mix(palette.deep(), SkimmateColour.of(scene.collected().ptCo()), 0.25));
        ink.line(drawn.getMinX() + 3, drawn.getMinY(), drawn.getMaxX() - 3, drawn.getMinY(), palette.accent(), 1.2);
    }

    /** Walls of columns, funnels, necks; painted last so that foam and bubbles lie inside. */
    void columnWalls(Ink ink) {
        section.axesMm.forEach(axis -> columnWalls(ink, axis));
    }

    private void columnWalls(Ink ink, double axis) {
        double base = section.column().funnelBaseMm();
        double top = base + section.column().funnelHeightMm();
        double opening = section.column().openingMm();
        for (int side = -1; side <= 1; side += 2) {
            Path2D wall = new Path2D.Double();
            wall.moveTo(axis + side * section.radiusMm, opening);
            wall.lineTo(axis + side * section.radiusMm, base);
            wall.lineTo(axis + side * section.radiusAt(top), top);
            wall.lineTo(axis + side * section.radiusAt(top), section.lipMm());
            ink.draw(model(wall), palette.glass(), Math.max(2, view.length(2.6)));
            double leg = axis + side * (section.radiusMm - 4);
            ink.line(view.x(leg), view.y(0), view.x(leg), view.y(opening), palette.glass(), 1.6);
        }
    }

    /** Salt that grows round the open end of the air line, outward. */
    private void saltCrust(Ink ink, Sight sight) {
        Random random = new Random(3);
        int grains = (int) Math.round(26 * sight.saltCrust());
        for (int i = 0; i < grains; i++) {
            double size = 1.5 + 3.5 * random.nextDouble();
            double away = 2 + 0.45 * i;
            double angle = 2 * Math.PI * random.nextDouble();
            double x = section.airEndMm().getX() + away * Math.cos(angle);
            double z = section.airEndMm().getY() + 0.7 * away * Math.sin(angle);
            Rectangle2D grain = view.box(x - size / 2, z - size / 2, x + size / 2, z + size / 2);
            ink.fill(grain, palette.dark() ? palette.ink() : palette.paper());
            ink.draw(grain, palette.muted(), 0.8);
        }
    }
}
