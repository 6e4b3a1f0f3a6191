package io.github.weirwise.demo.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** A pen on a graphics context: the few strokes and labels that all painters share. Sizes are pixels. */
final class Ink {
    private final Graphics2D graphics;

    Ink(Graphics2D graphics) {
        this.graphics = graphics;
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    Graphics2D graphics() {
        return graphics;
    }

    void fill(Shape shape, java.awt.Paint paint) {
        graphics.setPaint(paint);
        graphics.fill(shape);
    }

    void draw(Shape shape, Color colour, double widthPx) {
        graphics.setColor(colour);
        graphics.setStroke(new BasicStroke((float) widthPx, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        graphics.draw(shape);
    }

    void line(double x1, double y1, double x2, double y2, Color colour, double widthPx) {
        draw(new Line2D.Double(x1, y1, x2, y2), colour, widthPx);
    }

    void dashed(double x1, double y1, double x2, double y2, Color colour, double widthPx) {
        graphics.setColor(colour);
        graphics.setStroke(new BasicStroke(
                (float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 4}, 0));
        graphics.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** A dimension line between two heights with short end bars. */
    void span(double xPx, double y1, double y2, Color colour) {
        line(xPx, y1, xPx, y2, colour, 1.6);
        line(xPx - 4, y1, xPx + 4, y1, colour, 1.6);
        line(xPx - 4, y2, xPx + 4, y2, colour, 1.6);
    }

    /** An arrow along a straight line. */
    void arrow(double x1, double y1, double x2, double y2, Color colour, double widthPx) {
        line(x1, y1, x2, y2, colour, widthPx);
        double angle = Math.atan2(y2 - y1, x2 - x1);
        double size = 4 + 1.6 * widthPx;
        Path2D head = new Path2D.Double();
        head.moveTo(x2 + size * 0.4 * Math.cos(angle), y2 + size * 0.4 * Math.sin(angle));
        head.lineTo(x2 - size * Math.cos(angle - 0.5), y2 - size * Math.sin(angle - 0.5));
        head.lineTo(x2 - size * Math.cos(angle + 0.5), y2 - size * Math.sin(angle + 0.5));
        head.closePath();
        fill(head, colour);
    }

    FontMetrics font(Font font) {
        graphics.setFont(font);
        return graphics.getFontMetrics();
    }

    /** Text with its left end on the base line. */
    void text(String text, double xPx, double yPx, Font font, Color colour) {
        graphics.setFont(font);
        graphics.setColor(colour);
        graphics.drawString(text, (float) xPx, (float) yPx);
    }

    /** Text with its right end on the base line. */
    void textRight(String text, double xPx, double yPx, Font font, Color colour) {
        text(text, xPx - font(font).stringWidth(text), yPx, font, colour);
    }

    /** A quiet plate behind text, so that it can be read over anything. */
    void plate(Rectangle2D box, Color paper) {
        graphics.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), 225));
        graphics.fill(new java.awt.geom.RoundRectangle2D.Double(
                box.getX() - 4, box.getY() - 2, box.getWidth() + 8, box.getHeight() + 4, 8, 8));
    }
}
