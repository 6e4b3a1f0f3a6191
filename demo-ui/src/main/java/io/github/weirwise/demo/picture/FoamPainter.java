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
import java.util.function.DoubleUnaryOperator;

/**
 * The foam from the water up to where it ends: cells that grow on their way up as bubbles merge and drain, with flat walls in
 * dry foam and round ones in wet foam; and what it does at the lip.
 */
final class FoamPainter {
    private static final double FROTH_CELL_MM = 3.2;

    private final Section section;
    private final View view;
    private final Palette palette;

    FoamPainter(Brush brush) {
        section = brush.section();
        view = brush.view();
        palette = brush.palette();
    }

    void paint(Ink ink, Sight sight) {
        FoamTone tone = FoamTone.of(sight, palette);
        for (double axis : section.axesMm) {
            if (sight.froth()) {
                froth(ink, sight, axis);
            }
            if (sight.topMm() - sight.footMm() >= 0.5) {
                body(ink, sight, axis, tone);
            }
            film(ink, sight, axis);
            if (sight.reachesTheLip(section.lipMm())) {
                overTheLip(ink, sight, axis, tone);
            }
        }
    }

    /** A column with more air than it can pass is white from the opening up. */
    private void froth(Ink ink, Sight sight, double axis) {
        Shape outline = model(section.inside(axis, section.column().openingMm(), sight.footMm()));
        Color between = Palette.mix(palette.water(), palette.foam(), 0.35);
        Color cell = Palette.mix(palette.dark() ? new Color(0x9DB0B8) : Color.WHITE, palette.water(), 0.25);
        cells(ink, outline, up -> view.length(FROTH_CELL_MM), 0.3, 1, between, cell);
    }

    private void body(Ink ink, Sight sight, double axis, FoamTone tone) {
        Shape outline = model(section.inside(axis, sight.footMm(), sight.topMm()));
        double wet = sight.wetness();
        cells(ink, outline, size(sight), FoamTone.gap(wet), FoamTone.rounding(wet), tone.film(), tone.cell());
        if (!sight.reachesTheLip(section.lipMm())) {
            Rectangle2D box = outline.getBounds2D();
            double half = view.length(section.radiusAt(sight.topMm()));
            double row = box.getMinY() + 0.8;
            ink.line(view.x(axis) - half, row, view.x(axis) + half, row, tone.film(), 1.6);
        }
    }

    /** Drawn size of the cells in pixels by the height in pixels over the foot. */
    private DoubleUnaryOperator size(Sight sight) {
        double way = Math.max(1, section.lipMm() - sight.footMm());
        return up -> {
            double share = Math.max(0, Math.min(1, up / view.length(way) * 1.6));
            double grown = share * share * (3 - 2 * share);
            double least = Math.min(sight.freshCellMm(), sight.lipCellMm());
            return view.length(least + grown * (sight.lipCellMm() - least));
        };
    }

    private void cells(
            Ink ink, Shape outline, DoubleUnaryOperator size, double gap, double rounding, Color film, Color cell) {
        Graphics2D inside = (Graphics2D) ink.graphics().create();
        try {
            inside.clip(outline);
            Ink pen = new Ink(inside);
            pen.fill(outline, film);
            for (Path2D each : Cells.fill(outline.getBounds2D(), size, gap, rounding)) {
                pen.fill(each, cell);
            }
        } finally {
            inside.dispose();
        }
    }

    /** Slime and fat on the neck's wall, thicker upward. */
    private void film(Ink ink, Sight sight, double axis) {
        if (sight.neckFilm() < 0.02) {
            return;
        }
        double low = section.column().funnelBaseMm() + 0.6 * section.column().funnelHeightMm();
        Random random = new Random(23);
        Color colour = Palette.fade(SkimmateColour.of(6000), palette.dark() ? 150 : 120);
        for (double z = low; z < section.lipMm(); z += 2.2) {
            double share = (z - low) / (section.lipMm() - low);
            double thick = sight.neckFilm() * (1.5 + 5 * share) * (0.5 + random.nextDouble());
            double radius = section.radiusAt(z);
            ink.fill(view.box(axis - radius, z, axis - radius + thick, z + 2.4), colour);
            ink.fill(view.box(axis + radius - thick, z, axis + radius, z + 2.4), colour);
        }
    }

    /** Dry foam stands up over the lip and sheds flakes, creamy foam folds over it, runny foam runs down, water streams. */
    private void overTheLip(Ink ink, Sight sight, double axis, FoamTone tone) {
        double wet = sight.wetness();
        double neck = section.radiusAt(section.lipMm());
        double lip = section.lipMm();
        double rise = 8.5 - 4.5 * wet;
        double water = Math.max(0, 4 * wet - 3.2);
        double lean = 3.5 + 4.5 * Math.max(0, wet + 0.4) + 6 * water;
        double depth = lip - section.cupFloorMm - 4;
        double drop = Math.min(depth, 2 + 8 * Math.max(0, wet + 0.5) + 48 * Math.max(0, wet - 0.1));
        Path2D collar = new Path2D.Double();
        double left = axis - neck;
        double right = axis + neck;
        collar.moveTo(left - 1, lip - drop);
        collar.curveTo(left - lean - 1, lip - drop, left - lean - 3, lip + 1, left + 2, lip + rise * 0.8);
        collar.quadTo(axis, lip + 1.35 * rise, right - 2, lip + rise * 0.8);
        collar.curveTo(right + lean + 3, lip + 1, right + lean + 1, lip - drop, right + 1, lip - drop);
        collar.lineTo(right + 1, lip - 0.5);
        collar.lineTo(left - 1, lip - 0.5);
        collar.closePath();
        Shape shape = model(collar);
        Color stream = Palette.mix(palette.water(), palette.deep(), 0.7);
        Color film = Palette.mix(tone.film(), stream, water);
        Color cell = Palette.mix(tone.cell(), stream, 0.7 * water);
        double px = view.length(sight.lipCellMm());
        cells(ink, shape, up -> px, FoamTone.gap(wet), FoamTone.rounding(wet), film, cell);
        ink.draw(shape, Palette.fade(palette.foamLine(), 190), 1);
        if (wet < -0.35) {
            flakes(ink, sight, axis, tone);
        }
    }

    /** Pieces of stiff foam that slide down outside the neck. */
    private void flakes(Ink ink, Sight sight, double axis, FoamTone tone) {
        Random random = new Random(5);
        double neck = section.radiusAt(section.lipMm());
        for (int i = 0; i < 4; i++) {
            double side = i % 2 == 0 ? -1 : 1;
            double size = (0.6 + 0.4 * random.nextDouble()) * sight.lipCellMm();
            double x = axis + side * (neck + 0.5 * size);
            double z = section.lipMm() - 8 - 22 * random.nextDouble();
            Shape flake = model(new Ellipse2D.Double(x - size / 2, z, size, size * 0.7));
            ink.fill(flake, tone.cell());
            ink.draw(flake, tone.film(), 1);
        }
    }

    private Shape model(Shape shape) {
        return view.transform().createTransformedShape(shape);
    }
}
