package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import java.awt.Color;
import java.awt.geom.Ellipse2D;

/**
 * Bubbles rising in the column. Their number goes with the gas holdup; they are drawn several times larger than life, and
 * where a bubble is follows from its number and the time alone.
 */
final class BubblePainter extends Painter {
    private static final int MOST = 220;
    private static final double HOLDUP_FOR_MOST = 0.12;
    private static final double DRAWN_RISE_MM_PER_S = 62;
    private static final double SMALLEST_MM = 2.2;
    private static final double GOLDEN = 0.6180339887498949;

    BubblePainter(Brush brush) {
        super(brush);
    }

    void paint(Ink ink, Scene scene, double seconds) {
        for (double axis : section.axesMm) {
            paint(ink, scene, axis, seconds);
        }
    }

    private void paint(Ink ink, Scene scene, double axis, double seconds) {
        double foot = section.column().openingMm() + 14;
        double top = Math.min(section.lipMm(), scene.point().columnLevelMm()) - 1.5;
        if (top <= foot || scene.point().airLitresPerHour() <= 0) {
            return;
        }
        int count = (int) Math.min(MOST, MOST * scene.point().holdup() / HOLDUP_FOR_MOST / section.axesMm.size());
        Color body = Palette.fade(palette.paper(), palette.dark() ? 70 : 190);
        Color edge = Palette.fade(palette.accent(), 190);
        for (int i = 0; i < count; i++) {
            double size = SMALLEST_MM + 2.4 * part(i, 3);
            double rise = DRAWN_RISE_MM_PER_S * (0.75 + 0.2 * size / SMALLEST_MM);
            double travel = top - foot;
            double along = (part(i, 1) * travel + seconds * rise) % travel;
            double z = foot + along;
            double room = section.radiusAt(z) - size;
            double spread = Math.min(1, 0.35 + along / 60);
            double sway = 1.5 * Math.sin(seconds * 3 + i);
            double x = axis + clamp((2 * part(i, 2) - 1) * room * spread + sway, room);
            Ellipse2D bubble = new Ellipse2D.Double(
                    view.x(x - size / 2), view.y(z + size / 2), view.length(size), view.length(size));
            ink.fill(bubble, body);
            ink.draw(bubble, edge, 0.9);
        }
    }

    private static double clamp(double value, double limit) {
        return Math.max(-limit, Math.min(limit, value));
    }

    /** An even scatter in 0 to 1 by number and purpose. */
    private static double part(int number, int purpose) {
        double value = number * GOLDEN * purpose;
        double mixed = Math.sin(number * 12.9898 + purpose * 78.233) * 43758.5453;
        return Math.abs((value + mixed) % 1);
    }
}
