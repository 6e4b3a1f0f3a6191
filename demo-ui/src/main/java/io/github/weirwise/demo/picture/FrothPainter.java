package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.Random;

/**
 * Where water ends and foam begins a person sees no line: bubbles crowd, and the more they crowd the more it is foam. Drawn
 * over the boundary, so that the level shows as a zone some centimetres high and has to be read with a ruler.
 */
final class FrothPainter extends Painter {
    private static final double BELOW_MM = 13;
    private static final double ABOVE_MM = 11;
    private static final int BUBBLES = 420;

    FrothPainter(Brush brush) {
        super(brush);
    }

    void paint(Ink ink, Scene scene, Sight foam) {
        section.axesMm.forEach(axis -> paint(ink, scene, foam, axis));
    }

    private void paint(Ink ink, Scene scene, Sight foam, double axis) {
        if (scene.point().airLitresPerHour() <= 0) {
            return;
        }
        Random random = new Random(17);
        // The zone's middle lies a little off the level, and where cannot be told from the outside.
        double middle = foam.footMm() + 2 * (random.nextDouble() - 0.5);
        double low = Math.max(section.column().openingMm(), middle - BELOW_MM);
        double high = Math.min(section.lipMm(), middle + ABOVE_MM);
        Shape outline = model(section.inside(axis, low, high));
        Graphics2D inside = (Graphics2D) ink.graphics().create();
        try {
            inside.clip(outline);
            Ink pen = new Ink(inside);
            haze(pen, outline.getBounds2D());
            bubbles(pen, random, axis, low, high);
        } finally {
            inside.dispose();
        }
    }

    /** From water to foam in bands that get denser upward and end in the foam's own colour. */
    private void haze(Ink pen, Rectangle2D box) {
        int bands = 14;
        for (int i = 0; i < bands; i++) {
            double share = (i + 0.5) / bands;
            Color colour = Palette.mix(palette.foam(), palette.water(), 1 - share);
            double top = box.getMaxY() - (i + 1) * box.getHeight() / bands;
            double fade = Math.min(share, 1 - share) * 2;
            pen.fill(
                    new Rectangle2D.Double(box.getX(), top, box.getWidth(), box.getHeight() / bands + 0.5),
                    Palette.fade(colour, (int) Math.round(70 + 150 * fade)));
        }
    }

    private void bubbles(Ink pen, Random random, double axis, double low, double high) {
        Color line = Palette.fade(palette.foamLine(), 150);
        Color body = Palette.fade(palette.foam(), 170);
        for (int i = 0; i < BUBBLES; i++) {
            double up = Math.sqrt(random.nextDouble());
            double z = low + up * (high - low);
            double size = 2 + 2.4 * random.nextDouble();
            double x = axis + section.radiusAt(z) * (2 * random.nextDouble() - 1);
            Shape bubble = new Ellipse2D.Double(
                    view.x(x - size / 2), view.y(z + size / 2), view.length(size), view.length(size));
            pen.fill(bubble, body);
            pen.draw(bubble, line, 0.8);
        }
    }
}
