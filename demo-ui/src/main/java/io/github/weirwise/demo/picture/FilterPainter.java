package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Random;

/** What lies beyond the weir: filter pad, media, sump with the return pump, and the way there. */
final class FilterPainter extends Painter {
    private static final double PUMP_ROOM_MM = 46;
    private static final int MOST_MICROBUBBLES = 260;

    FilterPainter(Brush brush) {
        super(brush);
    }

    private double pumpRoomMm() {
        return section.beyondRightMm - PUMP_ROOM_MM;
    }

    void paint(Ink ink, Scene scene, Sight sight) {
        double left = section.beyondLeftMm;
        double right = section.beyondRightMm;
        double pumpRoom = pumpRoomMm();
        Rectangle2D water = view.box(section.sumpLeftMm(), section.sumpFloorMm, right, section.sumpLevelMm);
        ink.fill(water, palette.deep());
        media(ink, left + 4, pumpRoom - 8);
        ink.line(water.getMinX(), water.getMinY(), water.getMaxX(), water.getMinY(), palette.accent(), 1.4);
        Rectangle2D standing = view.box(left, section.padTopMm, pumpRoom, padWaterMm(scene));
        ink.fill(standing, palette.water());
        ink.line(standing.getMinX(), standing.getMinY(), standing.getMaxX(), standing.getMinY(), palette.accent(), 1.2);
        pad(ink, left, pumpRoom, scene);
        ink.fill(view.box(pumpRoom, section.mediaFootMm + 24, pumpRoom + 3, section.padTopMm + 34), palette.glass());
        drops(ink, left + 8, pumpRoom - 10);
        returnPump(ink, pumpRoom, right);
        microbubbles(ink, sight);
        walls(ink);
    }

    private void pad(Ink ink, double left, double right, Scene scene) {
        Rectangle2D pad = view.box(left, section.padFootMm, right, section.padTopMm);
        double dirt = Math.max(0, Math.min(1, (padWaterMm(scene) - section.padTopMm - 3) / 25));
        ink.fill(pad, Palette.mix(palette.pad(), palette.media(), 0.9 * dirt));
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
        RoundRectangle2D body =
                rounded(view.box(middle - 15, section.sumpFloorMm + 4, middle + 15, section.sumpFloorMm + 34), 6);
        ink.fill(body, palette.paper());
        ink.draw(body, palette.glass(), 1.6);
        Path2D pipe = new Path2D.Double();
        double bend = section.beyondWallTopMm + 14;
        pipe.moveTo(middle, section.sumpFloorMm + 34);
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

    /** Water standing on the pad; more of it when the weir is drowned. */
    double padWaterMm(Scene scene) {
        return Math.max(
                section.padTopMm + 3,
                Math.min(
                        section.beyondWallTopMm - 3,
                        scene.settings().condition().levelBeyondWeirMm()));
    }

    static RoundRectangle2D rounded(Rectangle2D box, double arc) {
        return new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), arc, arc);
    }

    /** Fine bubbles that go with the water: a haze of specks below the weir and in the sump. */
    private void microbubbles(Ink ink, Sight sight) {
        Random random = new Random(41);
        int count = (int) Math.round(sight.microbubbles() * MOST_MICROBUBBLES);
        double left = section.sumpLeftMm() + 3;
        for (int i = 0; i < count; i++) {
            double x = left + (section.beyondRightMm - 3 - left) * random.nextDouble();
            double share = random.nextDouble();
            double z = section.sumpFloorMm + 4 + (section.sumpLevelMm - section.sumpFloorMm - 6) * Math.sqrt(share);
            double size = Math.max(1.2, view.length(1.3));
            ink.fill(
                    new Ellipse2D.Double(view.x(x), view.y(z), size, size),
                    palette.dark() ? palette.ink() : palette.paper());
        }
    }

    private void walls(Ink ink) {
        double left = section.sumpLeftMm();
        double right = section.beyondRightMm;
        double floor = section.sumpFloorMm;
        ink.fill(view.box(right, floor, right + Section.WALL_MM, section.beyondWallTopMm), palette.glass());
        ink.fill(
                view.box(left - Section.WALL_MM, floor - Section.WALL_MM, right + Section.WALL_MM, floor),
                palette.glass());
        if (section.overSump) {
            ink.fill(view.box(left - Section.WALL_MM, floor, left, 0), palette.glass());
            ink.fill(
                    view.box(section.beyondLeftMm - Section.WALL_MM, section.mediaFootMm + 24, section.beyondLeftMm, 0),
                    palette.glass());
        }
        if (section.ownChamber) {
            ink.fill(view.box(left - Section.WALL_MM, 0, left, section.padTopMm + 34), palette.glass());
        }
    }
}
