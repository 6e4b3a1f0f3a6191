package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.panel.WrappedLine;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Lines of a label under each other. */
record Lines(List<Line> lines) {
    /** A line, and whether the label can do without it where room is short. */
    record Line(String text, Font font, Color colour, boolean spare) {
        Line(String text, Font font, Color colour) {
            this(text, font, colour, false);
        }
    }

    /** Lines that are too wide go on in another one. */
    Lines wrapped(Ink ink, double roomPx) {
        return new Lines(lines.stream()
                .flatMap(line -> WrappedLine.broken(line.text, ink.font(line.font), (int) roomPx).stream()
                        .map(part -> new Line(part, line.font, line.colour, line.spare)))
                .toList());
    }

    /** What cannot be left out. */
    Lines needed() {
        return new Lines(lines.stream().filter(line -> !line.spare).toList());
    }

    private static double high(Ink ink, Line line) {
        return ink.font(line.font).getHeight() * 0.94;
    }

    double highPx(Ink ink) {
        return lines.stream().mapToDouble(line -> high(ink, line)).sum();
    }

    /** Writes them with a plate behind, ending or beginning at a column. */
    void write(Ink ink, double xPx, double topPx, boolean ends, Color paper) {
        double wide = lines.stream()
                .mapToDouble(line -> ink.font(line.font).stringWidth(line.text))
                .max()
                .orElse(0);
        ink.plate(new Rectangle2D.Double(ends ? xPx - wide : xPx, topPx, wide, highPx(ink)), paper);
        double top = topPx;
        for (Line line : lines) {
            double base = top + ink.font(line.font).getAscent();
            if (ends) {
                ink.textRight(line.text, xPx, base, line.font, line.colour);
            } else {
                ink.text(line.text, xPx, base, line.font, line.colour);
            }
            top += high(ink, line);
        }
    }
}
