package io.github.weirwise.demo.picture;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** What must not be overlooked, in words with a sign, over the foot of the picture, to the right, where least is to be seen. */
final class AlarmPainter extends Painter {
    private final Font font;

    AlarmPainter(Brush brush) {
        super(brush);
        font = brush.bold();
    }

    /** Paints one line an alarm, the gravest on top; nothing without any. */
    void paint(Ink ink, List<Sight.Alarm> alarms, Rectangle2D room) {
        FontMetrics metrics = ink.font(font);
        double high = metrics.getHeight() + 8.0;
        double top = room.getMaxY() - high * alarms.size();
        for (Sight.Alarm alarm : alarms) {
            String text = words.of("picture.alarm." + alarm);
            double wide = Math.min(room.getWidth(), metrics.stringWidth(text) + high + 14);
            double left = room.getMaxX() - wide;
            RoundRectangle2D plate = new RoundRectangle2D.Double(left, top, wide, high - 3, 8, 8);
            ink.fill(plate, palette.paper());
            ink.draw(plate, palette.danger(), 2);
            sign(ink, left + 8, top + 3, high - 10);
            ink.text(text, left + high + 4, top + metrics.getAscent() + 2.5, font, palette.ink());
            top += high;
        }
    }

    private void sign(Ink ink, double x, double y, double size) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x + size / 2, y);
        triangle.lineTo(x + size, y + size);
        triangle.lineTo(x, y + size);
        triangle.closePath();
        ink.fill(triangle, palette.danger());
        ink.line(x + size / 2, y + 0.38 * size, x + size / 2, y + 0.65 * size, palette.paper(), 2);
        ink.line(x + size / 2, y + 0.83 * size, x + size / 2, y + 0.84 * size, palette.paper(), 2.2);
    }
}
