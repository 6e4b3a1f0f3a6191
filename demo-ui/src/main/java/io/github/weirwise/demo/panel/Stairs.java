package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sum drawn as stairs: each step is a term with its number and name below, and the last line is what they come to. Nothing is
 * a dashed line, what is wanted a band.
 *
 * @param steps the terms, in order
 * @param wanted what the sum should be
 * @param wantedWord the word for it, at the right end of the band
 * @param total the sum in words
 */
public record Stairs(List<Step> steps, Range wanted, String wantedWord, String total) {
    private static final BasicStroke FINE = new BasicStroke(1.2f);
    private static final BasicStroke DASHED =
            new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 4}, 0);
    private static final BasicStroke STRONG = new BasicStroke(2);
    private static final double MORE_OF_LABEL_PX = 4;

    /** Copies the list. */
    public Stairs {
        steps = List.copyOf(steps);
    }

    /**
     * A term.
     *
     * @param name what it is
     * @param number its value in words
     * @param value its value on the scale of the sum
     * @param range its 80 % range, drawn as a whisker where it is one
     */
    public record Step(String name, String number, double value, Range range) {}

    /** Between values and pixels. */
    private record Scale(double foot, double perUnit, double low) {
        double y(double value) {
            return foot - perUnit * (value - low);
        }
    }

    /** Draws them into a box with letters of a size. */
    public void draw(Graphics2D g, Rectangle2D box, Palette palette, Font font) {
        g.setFont(font);
        FontMetrics metrics = g.getFontMetrics();
        double at = 0;
        double low = Math.min(0, wanted.low());
        double high = Math.max(0, wanted.high());
        for (Step step : steps) {
            low = Math.min(low, at + Math.min(0, step.range().low()));
            high = Math.max(high, at + Math.max(0, step.range().high()));
            at += step.value();
        }
        double foot = box.getMaxY() - 3.0 * metrics.getHeight() - MORE_OF_LABEL_PX;
        double top = box.getY() + metrics.getHeight() + 2 * MORE_OF_LABEL_PX;
        Scale scale = new Scale(foot, Math.max(1, foot - top) / Math.max(1e-6, high - low), low);
        double word = box.getMaxX() - metrics.stringWidth(wantedWord) - MORE_OF_LABEL_PX;
        double ends = word - MORE_OF_LABEL_PX;
        band(g, scale, box, word, palette);
        line(g, box.getX(), ends, scale.y(0), palette.ink(), DASHED);
        double wide = (ends - box.getX()) / steps.size();
        g.setFont(fitting(font, metrics, wide));
        double from = 0;
        for (int i = 0; i < steps.size(); i++) {
            double x = box.getX() + i * wide;
            bar(g, scale, from, steps.get(i), x, wide, palette);
            if (i + 1 < steps.size()) {
                double level = scale.y(from + steps.get(i).value());
                line(g, x + wide * 0.8, x + wide * 1.2, level, palette.muted(), FINE);
            }
            words(g, steps.get(i), x, wide, foot, palette);
            from += steps.get(i).value();
        }
        line(g, box.getX(), ends, scale.y(at), palette.muted(), STRONG);
        g.setFont(Standing.COMPUTED.font(font));
        g.drawString(total, (float) box.getX(), (float) box.getY() + metrics.getAscent());
    }

    /** Letters so large that numbers and words do not run into each other, but not illegible. */
    private Font fitting(Font font, FontMetrics metrics, double wide) {
        double longest = steps.stream()
                .flatMap(step -> Stream.concat(
                        Stream.of(step.number()), Stream.of(step.name().split(" "))))
                .mapToDouble(word -> metrics.stringWidth(word) + MORE_OF_LABEL_PX)
                .max()
                .orElse(0);
        return longest <= wide ? font : font.deriveFont((float) (font.getSize2D() * Math.max(0.75, wide / longest)));
    }

    private static void line(Graphics2D g, double left, double right, double y, Color colour, BasicStroke stroke) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(left, y, right, y));
    }

    private void band(Graphics2D g, Scale scale, Rectangle2D box, double wordPx, Palette palette) {
        double top = scale.y(wanted.high());
        double foot = scale.y(wanted.low());
        g.setColor(Palette.fade(palette.good(), 50));
        g.fill(new Rectangle2D.Double(box.getX(), top, box.getWidth(), Math.max(2, foot - top)));
        g.setColor(palette.good());
        g.drawString(wantedWord, (float) wordPx, (float) (top + foot + 8) / 2);
    }

    private static void bar(Graphics2D g, Scale scale, double from, Step step, double x, double wide, Palette palette) {
        Color colour = step.value() < 0 ? palette.second() : palette.accent();
        double to = from + step.value();
        double top = scale.y(Math.max(from, to));
        Rectangle2D bar = new Rectangle2D.Double(
                x + wide * 0.2, top, wide * 0.6, Math.max(1.5, scale.y(Math.min(from, to)) - top));
        g.setColor(Palette.fade(colour, 110));
        g.fill(bar);
        g.setColor(colour);
        g.setStroke(FINE);
        g.draw(bar);
        if (step.range().width() > 0) {
            double middle = x + wide / 2;
            double high = scale.y(from + step.range().high());
            double low = scale.y(from + step.range().low());
            line(g, middle - 4, middle + 4, high, palette.ink(), FINE);
            line(g, middle - 4, middle + 4, low, palette.ink(), FINE);
            g.draw(new Line2D.Double(middle, high, middle, low));
        }
    }

    private static void words(Graphics2D g, Step step, double x, double wide, double foot, Palette palette) {
        g.setColor(palette.ink());
        FontMetrics metrics = g.getFontMetrics();
        double y = foot + metrics.getAscent() + MORE_OF_LABEL_PX;
        centred(g, step.number(), x, wide, y);
        for (String line : WrappedLine.broken(step.name(), metrics, (int) wide)) {
            y += metrics.getHeight();
            centred(g, line, x, wide, y);
        }
    }

    private static void centred(Graphics2D g, String text, double x, double wide, double y) {
        double spare = Math.max(0, wide - g.getFontMetrics().stringWidth(text));
        g.drawString(text, (float) (x + spare / 2), (float) y);
    }
}
