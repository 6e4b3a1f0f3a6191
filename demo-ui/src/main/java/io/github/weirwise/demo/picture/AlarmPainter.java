package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.panel.WrappedLine;
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

    /** Paints a plate for each alarm, the gravest on top; nothing without any. */
    void paint(Ink ink, List<Sight.Alarm> alarms, Rectangle2D room) {
        FontMetrics metrics = ink.font(font);
        double line = metrics.getHeight();
        double beside = line + 8 + 14;
        List<List<String>> texts = alarms.stream()
                .map(alarm -> WrappedLine.broken(
                        words.of("picture.alarm." + alarm), metrics, (int) (room.getWidth() - beside)))
                .toList();
        double top = room.getMaxY()
                - texts.stream().mapToDouble(each -> each.size() * line + 8).sum();
        for (List<String> text : texts) {
            double wide = text.stream().mapToDouble(metrics::stringWidth).max().orElse(0) + beside;
            double high = text.size() * line + 8;
            double left = room.getMaxX() - wide;
            RoundRectangle2D plate = new RoundRectangle2D.Double(left, top, wide, high - 3, 8, 8);
            ink.fill(plate, palette.paper());
            ink.draw(plate, palette.danger(), 2);
            sign(ink, left + 8, top + 3, line - 2);
            double base = top + metrics.getAscent() + 2.5;
            for (String each : text) {
                ink.text(each, left + beside - 10, base, font, palette.ink());
                base += line;
            }
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
