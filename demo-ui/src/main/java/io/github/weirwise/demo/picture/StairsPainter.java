package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.unit.OperatingPoint;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;

/**
 * How the level adds up, drawn as stairs against the funnel base: crest, plus head, plus gas lift, less foam and cup
 * pressure, and there the level is. The same sum that the library solves.
 */
final class StairsPainter extends Painter {
    private static final int STEPS = 4;

    StairsPainter(Brush brush) {
        super(brush);
    }

    void paint(Ink ink, Scene scene, Rectangle2D box) {
        double base = brush.section().column().funnelBaseMm();
        OperatingPoint point = scene.point();
        double crest = point.clearLevelMm() - point.headMm() - base;
        double clear = point.clearLevelMm() - base;
        double level = point.submergenceMm();
        double lifted = clear + point.gasLiftMm();
        Range band = scene.bandMm();
        double low = Math.min(Math.min(crest, 0), Math.min(level, band.low())) - 5;
        double high = Math.max(Math.max(lifted, level), Math.max(band.high(), clear)) + 8;
        double title = brush.font().getSize2D() * 3.0;
        double foot = brush.font().getSize2D() * 3.0;
        Rectangle2D plot = new Rectangle2D.Double(
                box.getX() + 30, box.getY() + title, box.getWidth() - 36, Math.max(20, box.getHeight() - title - foot));
        View rule =
                new View(plot.getHeight() / (high - low), 0, plot.getMaxY() + low * plot.getHeight() / (high - low));
        ink.plate(box, palette.paper());
        ink.text(
                words.of("picture.stairs"),
                box.getX() + 2,
                box.getY() + brush.font().getSize2D() * 1.2,
                brush.bold(),
                palette.ink());
        ink.text(
                words.of(
                        "picture.stairs.unit",
                        Unit.MILLIMETRE.symbol(words.book().units())),
                box.getX() + 2,
                box.getY() + brush.font().getSize2D() * 2.4,
                brush.small(),
                palette.muted());
        scale(ink, rule, plot, low, high);
        ink.fill(
                new Rectangle2D.Double(plot.getX(), rule.y(band.high()), plot.getWidth(), rule.length(band.width())),
                Palette.fade(palette.good(), 60));
        ink.dashed(plot.getX(), rule.y(0), plot.getMaxX(), rule.y(0), palette.ink(), 1.2);
        step(ink, rule, plot, 0, low, crest, palette.second(), words.of("picture.stairs.crest"), crest);
        step(ink, rule, plot, 1, crest, clear, palette.accent(), words.of("picture.stairs.head"), point.headMm());
        step(ink, rule, plot, 2, clear, lifted, palette.accent(), words.of("picture.stairs.gas"), point.gasLiftMm());
        step(ink, rule, plot, 3, lifted, level, palette.muted(), words.of("picture.stairs.foam"), level - lifted);
        ink.line(plot.getX(), rule.y(level), plot.getMaxX(), rule.y(level), palette.accent(), 2.4);
        ink.textRight(
                words.say(level, Unit.MILLIMETRE),
                plot.getMaxX(),
                rule.y(level) - 5,
                brush.computed(),
                palette.accent());
    }

    /** Ticks at round numbers of the unit that is shown. */
    private void scale(Ink ink, View rule, Rectangle2D plot, double low, double high) {
        UnitSystem system = words.book().units();
        double perMm = Unit.MILLIMETRE.toShown(1, system);
        double every = roundStep(1.5 * brush.small().getSize2D() / rule.pxPerMm() * perMm);
        ink.line(plot.getX(), plot.getY(), plot.getX(), plot.getMaxY(), palette.muted(), 1);
        for (long tick = (long) Math.ceil(low * perMm / every); tick * every <= high * perMm; tick++) {
            double y = rule.y(tick * every / perMm);
            ink.line(plot.getX() - 5, y, plot.getX(), y, palette.muted(), 1);
            ink.textRight(
                    number(tick * every),
                    plot.getX() - 8,
                    y + brush.small().getSize2D() * 0.36,
                    brush.small(),
                    palette.muted());
        }
    }

    /** The least of 1, 2, 5 and their tenfolds and tenths that is not under a number. */
    private static double roundStep(double least) {
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * decade >= least) {
                return factor * decade;
            }
        }
        return 10 * decade;
    }

    private String number(double shown) {
        NumberFormat format = NumberFormat.getNumberInstance(words.book().locale());
        format.setMaximumFractionDigits(2);
        return format.format(shown == 0 ? 0.0 : shown);
    }

    private void step(
            Ink ink,
            View rule,
            Rectangle2D plot,
            int place,
            double from,
            double to,
            Color colour,
            String name,
            double value) {
        double wide = plot.getWidth() / STEPS;
        double x = plot.getX() + place * wide;
        double top = rule.y(Math.max(from, to));
        Rectangle2D bar = new Rectangle2D.Double(
                x + wide * 0.16, top, wide * 0.68, Math.max(1, rule.length(Math.abs(to - from))));
        ink.fill(bar, Palette.fade(colour, place == 0 ? 90 : 150));
        ink.draw(bar, colour, 1.2);
        ink.line(x + wide * 0.16, rule.y(to), x + wide * 1.16, rule.y(to), colour, 1.2);
        double below = plot.getMaxY() + brush.small().getSize2D() * 1.25;
        ink.textCentred(name, x + wide / 2, below, brush.small(), palette.ink());
        String number = words.book().number(value, Unit.MILLIMETRE);
        ink.textCentred(
                place > 0 && value > 0 ? "+" + number : number,
                x + wide / 2,
                below + brush.small().getSize2D() * 1.2,
                brush.small(),
                palette.ink());
    }
}
