package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * The foam from the water up to where it ends: cells that grow on their way up as bubbles merge and drain, with flat walls in
 * dry foam and round ones in wet foam; and what it does at the lip.
 */
final class FoamPainter extends Painter {
    private static final int TONES = 64;
    /** Seen at once in a column that froths. */
    private static final int LARGE_BUBBLES = 120;

    FoamPainter(Brush brush) {
        super(brush);
    }

    /** Paints it with its cells so many rows on their way. */
    void paint(Ink ink, Sight sight, double moved) {
        FoamTone tone = FoamTone.of(sight, palette);
        Texture foam = new Texture(ink, sight, moved, tone.film(), tone.cell());
        for (double axis : section.axesMm) {
            if (sight.froth()) {
                froth(ink, sight, moved, axis);
            }
            if (sight.topMm() - sight.footMm() >= 0.5) {
                body(ink, sight, axis, tone, foam);
            }
            film(ink, sight, axis);
            if (sight.reachesTheLip(section.lipMm())) {
                overTheLip(ink, sight, moved, axis, tone);
            }
        }
    }

    /** Everything that foam can be painted on. */
    Rectangle2D room() {
        return view.box(section.cupLeftMm, section.column().openingMm(), section.cupRightMm, section.cupTopMm);
    }

    /** A column with more air than it can pass is white from the opening up, and large bubbles churn in it. */
    private void froth(Ink ink, Sight sight, double moved, double axis) {
        double low = section.column().openingMm();
        Shape outline = model(section.inside(axis, low, sight.footMm()));
        Color between = Palette.mix(palette.water(), palette.deep(), 0.55);
        Color cell = palette.dark() ? new Color(0x9DB0B8) : Color.WHITE;
        new Texture(ink, sight, moved, between, cell).paint(outline, axis);
        Random random = new Random(29);
        double travel = sight.footMm() - low;
        for (int i = 0; i < LARGE_BUBBLES; i++) {
            double size = 3 + 11 * Math.pow(random.nextDouble(), 3);
            double z = low + (random.nextDouble() * travel + moved * (1 + 0.2 * size)) % travel;
            double room = section.radiusAt(z) - size / 2;
            double x = axis + room * (2 * random.nextDouble() - 1);
            Shape bubble = model(new Ellipse2D.Double(x - size / 2, z - 0.35 * size, size, 0.7 * size));
            ink.fill(bubble, Palette.fade(cell, 170));
            ink.draw(bubble, Palette.fade(palette.accent(), 130), 0.9);
        }
    }

    private void body(Ink ink, Sight sight, double axis, FoamTone tone, Texture foam) {
        Shape outline = model(section.inside(axis, sight.footMm(), sight.topMm()));
        foam.paint(outline, axis);
        if (!sight.reachesTheLip(section.lipMm())) {
            Rectangle2D box = outline.getBounds2D();
            double half = view.length(section.radiusAt(sight.topMm()));
            double row = box.getMinY() + 0.8;
            ink.line(view.x(axis) - half, row, view.x(axis) + half, row, tone.film(), 1.6);
        }
    }

    /** Film and cells in two colours, worked out for every point of the device. */
    private final class Texture {
        private final Graphics2D graphics;
        private final FoamFlow flow;
        private final Cells cells;
        private final int[] tones = new int[TONES];

        Texture(Ink ink, Sight sight, double moved, Color film, Color cell) {
            graphics = ink.graphics();
            flow = new FoamFlow(section, sight, moved);
            cells = new Cells(FoamTone.gap(sight.wetness()), FoamTone.rounding(sight.wetness()));
            Arrays.setAll(tones, i -> Palette.mix(cell, film, i / (TONES - 1.0)).getRGB());
        }

        void paint(Shape outline, double axis) {
            AffineTransform device = graphics.getTransform();
            double scale = device.getScaleX();
            Graphics2D inside = (Graphics2D) graphics.create();
            try {
                inside.clip(outline);
                inside.setTransform(new AffineTransform());
                Rectangle box = inside.getClipBounds();
                BufferedImage image =
                        new BufferedImage(Math.max(1, box.width), Math.max(1, box.height), BufferedImage.TYPE_INT_RGB);
                for (int j = 0; j < box.height; j++) {
                    double z = view.heightMm((box.y + j + 0.5 - device.getTranslateY()) / scale);
                    for (int i = 0; i < box.width; i++) {
                        double x = (box.x + i + 0.5 - device.getTranslateX()) / scale;
                        double film = flow.film(cells, view.widthMm(x - view.x(axis)), z, scale * view.pxPerMm());
                        image.setRGB(i, j, tones[(int) Math.round(film * (tones.length - 1))]);
                    }
                }
                inside.drawImage(image, box.x, box.y, null);
            } finally {
                inside.dispose();
            }
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
    private void overTheLip(Ink ink, Sight sight, double moved, double axis, FoamTone tone) {
        double wet = sight.wetness();
        double water = Math.max(0, 4 * wet - 3.2);
        double neck = section.radiusAt(section.lipMm());
        double rise = 8.5 - 4.5 * wet;
        Path2D over = new Path2D.Double();
        over.moveTo(axis - neck - 1, section.lipMm() - 0.5);
        List<Point2D> outside = outside(wet, water);
        for (int i = outside.size() - 1; i >= 0; i--) {
            Point2D at = outside.get(i);
            over.lineTo(axis - neck - at.getX(), section.lipMm() + at.getY());
        }
        over.curveTo(
                axis - 0.55 * neck,
                section.lipMm() + 1.25 * rise,
                axis + 0.55 * neck,
                section.lipMm() + 1.25 * rise,
                axis + neck + outside.get(0).getX(),
                section.lipMm() + outside.get(0).getY());
        outside.forEach(at -> over.lineTo(axis + neck + at.getX(), section.lipMm() + at.getY()));
        over.lineTo(axis + neck + 1, section.lipMm() - 0.5);
        over.closePath();
        Shape shape = model(over);
        Color stream = Palette.mix(palette.water(), palette.deep(), 0.7);
        Color film = Palette.mix(tone.film(), stream, water);
        Color cell = Palette.mix(tone.cell(), stream, 0.7 * water);
        new Texture(ink, sight, moved, film, cell).paint(shape, axis);
        ink.draw(shape, Palette.fade(palette.foamLine(), 190), 1);
        if (wet < -0.35) {
            flakes(ink, sight, axis, tone);
        }
    }

    /**
     * The outer edge of what hangs over the lip on one side, from the top down, as distances from neck and lip: a round fold, and
     * below it a sheet that clings to the neck, ends in a nose or reaches the floor of the cup, and spreads there.
     */
    private List<Point2D> outside(double wet, double water) {
        double fold = 3.5 + 2.5 * Math.max(0, wet + 0.4);
        double sheet = 2.2 + 1.6 * Math.max(0, wet) + 2 * water;
        double depth = section.lipMm() - section.cupFloorMm - 1;
        double drop = Math.min(depth, 3 + 8 * Math.max(0, wet + 0.5) + 70 * Math.max(0, wet - 0.1));
        double nose = Math.min(drop, 1.6 * sheet);
        List<Point2D> edge = new ArrayList<>();
        for (double down = -0.8 * fold; down <= drop; down += 0.5) {
            double round = Math.sqrt(Math.max(0, 1 - Math.pow((down - 0.1 * fold) / fold, 2)));
            double wave = 1 + 0.13 * wet * Math.sin(0.42 * down) * Math.min(1, Math.max(0, down) / 8);
            double end = Math.max(0, down - drop + nose) / nose;
            double hangs = down < 0 || drop < 1.5 * fold ? 0 : sheet * wave;
            double foot = drop < depth ? Math.sqrt(Math.max(0, 1 - end * end)) : 1 + 0.7 * water * Math.pow(end, 3);
            edge.add(new Point2D.Double(1 + Math.max(fold * round, hangs * foot), -down));
        }
        edge.add(new Point2D.Double(1, -Math.min(drop, drop < 1.5 * fold ? 1.1 * fold : drop)));
        return edge;
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
}
