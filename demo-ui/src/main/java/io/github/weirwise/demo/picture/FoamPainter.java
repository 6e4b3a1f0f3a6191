package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;

/**
 * The foam between water and lip. Dry foam is drawn as large open cells with thin films, wet foam as small round bubbles
 * apart in water; cells grow on their way up, as bubbles merge and drain.
 */
final class FoamPainter {
    private static final double SMALLEST_CELL_MM = 4.2;

    private final Section section;
    private final View view;
    private final Palette palette;

    FoamPainter(Brush brush) {
        section = brush.section();
        view = brush.view();
        palette = brush.palette();
    }

    void paint(Ink ink, Scene scene) {
        FoamBody foam = FoamBody.of(scene);
        if (foam.topMm() - foam.footMm() < 1) {
            return;
        }
        Shape outline = view.transform().createTransformedShape(section.inside(foam.footMm(), foam.topMm()));
        Color tint = SkimmateColour.of(scene.point().darknessPtCo() * 0.25);
        Color body = Palette.mix(palette.foam(), tint, foam.wetness() > 0.6 ? 0.05 : 0.16);
        Color between = foam.wetness() > 0 ? Palette.mix(body, palette.water(), 0.7 * foam.wetness()) : body;
        Graphics2D inside = (Graphics2D) ink.graphics().create();
        try {
            inside.clip(outline);
            Ink pen = new Ink(inside);
            pen.fill(outline, between);
            cells(pen, foam, body);
        } finally {
            inside.dispose();
        }
        if (foam.topMm() >= section.lipMm() - 0.5) {
            overTheLip(ink, foam, body);
        }
    }

    private void cells(Ink pen, FoamBody foam, Color body) {
        double wet = foam.wetness();
        double height = foam.topMm() - foam.footMm();
        double radiusShare = wet > 0 ? 0.54 - 0.16 * wet : 0.56 - 0.02 * wet;
        double lineWidth = wet > 0 ? 1 : 0.9 - 0.15 * wet;
        Color line = Palette.fade(palette.foamLine(), 200);
        Color shine = Palette.mix(body, Color.WHITE, palette.dark() ? 0.12 : 0.55);
        double along = 0;
        int row = 0;
        while (along < height + 8) {
            double size = cellMm(along / height, wet);
            double z = foam.footMm() + along;
            double radius = section.radiusAt(Math.min(z, foam.topMm()));
            Random random = new Random(31L * row + 7);
            for (double x = -radius - size + (row % 2) * size / 2; x < radius + size; x += size) {
                double jitter = size * 0.16;
                double d = size * 2 * radiusShare * (0.86 + 0.28 * random.nextDouble());
                double cx = section.axisMm + x + jitter * (random.nextDouble() - 0.5);
                double cz = z + jitter * (random.nextDouble() - 0.5);
                Shape cell =
                        new Ellipse2D.Double(view.x(cx - d / 2), view.y(cz + d / 2), view.length(d), view.length(d));
                pen.fill(cell, shine);
                pen.draw(cell, line, lineWidth);
            }
            along += size * 0.86;
            row++;
        }
    }

    private static double cellMm(double share, double wetness) {
        double grow = 1 + (1.1 - 0.7 * wetness) * Math.max(0, Math.min(1, share));
        return SMALLEST_CELL_MM * grow * (1 - 0.25 * Math.max(0, wetness));
    }

    /** A collar of foam that leans over the lip on both sides; a thin sheet when it is water. */
    private void overTheLip(Ink ink, FoamBody foam, Color body) {
        double neck = section.radiusAt(section.lipMm());
        double rise = 9 - 5 * Math.max(0, foam.wetness()) + 5 * Math.max(0, -foam.wetness());
        double lean = 5 + 8 * Math.max(0, foam.wetness());
        double drop = 8 + 30 * Math.max(0, foam.wetness());
        double lip = section.lipMm();
        Path2D collar = new Path2D.Double();
        collar.moveTo(section.axisMm - neck - 1, lip - drop);
        collar.quadTo(section.axisMm - neck - lean - 2, lip - 2, section.axisMm - neck - 2, lip + rise * 0.6);
        collar.quadTo(section.axisMm, lip + 1.7 * rise, section.axisMm + neck + 2, lip + rise * 0.6);
        collar.quadTo(section.axisMm + neck + lean + 2, lip - 2, section.axisMm + neck + 1, lip - drop);
        collar.lineTo(section.axisMm + neck - 1, lip);
        collar.lineTo(section.axisMm - neck + 1, lip);
        collar.closePath();
        Shape shape = view.transform().createTransformedShape(collar);
        ink.fill(shape, body);
        ink.draw(shape, palette.foamLine(), 1.2);
        Rectangle2D box = shape.getBounds2D();
        Random random = new Random(5);
        Graphics2D inside = (Graphics2D) ink.graphics().create();
        try {
            inside.clip(shape);
            Ink pen = new Ink(inside);
            double size = Math.max(5, view.length(cellMm(1, foam.wetness())));
            for (double y = box.getMinY(); y < box.getMaxY(); y += size * 0.9) {
                for (double x = box.getMinX(); x < box.getMaxX(); x += size) {
                    double d = size * (0.85 + 0.3 * random.nextDouble());
                    pen.draw(new Ellipse2D.Double(x + 2 * random.nextDouble(), y, d, d), palette.foamLine(), 0.9);
                }
            }
        } finally {
            inside.dispose();
        }
    }
}
