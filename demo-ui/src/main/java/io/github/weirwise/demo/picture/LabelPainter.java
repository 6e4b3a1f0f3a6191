package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.panel.WrappedLine;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Numbers where they belong: submergence at the funnel, head at the weir, amount and darkness at the cup. */
final class LabelPainter extends Painter {
    /** Labels on the left end here, beside the drain hose. */
    private static final double LABEL_RIGHT_MM = -22;

    /** The return pump's pipe stands so far from the right end. */
    private static final double PIPE_MM = 24;

    private static final double GAP_PX = 7;
    private static final double LEAST_CREEP = 0.5;

    LabelPainter(Brush brush) {
        super(brush);
    }

    void paint(Ink ink, Scene scene) {
        band(ink, scene);
        base(ink);
        if (!scene.figures()) {
            return;
        }
        level(ink, scene);
        weir(ink, scene);
        double inlet = view.x(18);
        ink.arrow(inlet, view.y(section.wallTopMm - 6), inlet, view.y(section.wallTopMm - 34), palette.accent(), 2);
        double low = section.column().funnelBaseMm();
        double under = left(ink, amount(scene), section.lipMm(), 0);
        under = left(ink, flows(scene), section.wallTopMm + 14, under);
        left(ink, submergence(scene), low + scene.point().submergenceMm() / 2, under);
    }

    private void band(Ink ink, Scene scene) {
        Range band = scene.bandMm();
        double base = section.column().funnelBaseMm();
        double left = section.axisMm - section.radiusMm - 9;
        double right = section.axesMm.get(section.axesMm.size() - 1) + section.radiusMm + 9;
        for (double side : new double[] {left, right}) {
            Rectangle2D mark = view.box(side - 3.5, base + band.low(), side + 3.5, base + band.high());
            ink.fill(mark, palette.good());
        }
        Rectangle2D across = view.box(left, base + band.low(), right, base + band.high());
        ink.fill(across, Palette.fade(palette.good(), 46));
    }

    /** The funnel base, which can be seen on the unit itself. */
    private void base(Ink ink) {
        double base = section.column().funnelBaseMm();
        double right = section.axesMm.get(section.axesMm.size() - 1) + section.radiusMm;
        ink.dashed(view.x(-20), view.y(base), view.x(right + 12), view.y(base), palette.ink(), 1.2);
    }

    private void level(Ink ink, Scene scene) {
        double base = section.column().funnelBaseMm();
        double level = base + scene.point().submergenceMm();
        double left = section.axisMm - section.radiusMm;
        double right = section.axesMm.get(section.axesMm.size() - 1) + section.radiusMm;
        ink.line(view.x(left - 24), view.y(level), view.x(right + 2), view.y(level), palette.accent(), 2.4);
        ink.span(view.x(left - 21), view.y(base), view.y(level), palette.accent());
        scene.expected().ifPresent(each -> expected(ink, left - 32, base, each.levelMm()));
    }

    private List<Line> submergence(Scene scene) {
        double mm = scene.point().submergenceMm();
        return List.of(
                new Line(words.say(Math.abs(mm), Unit.MILLIMETRE), brush.computed(), palette.accent()),
                small("picture.computed"),
                small(mm < 0 ? "picture.below" : "picture.over"));
    }

    /** A bracket over the levels that were said to come. */
    private void expected(Ink ink, double xMm, double base, Range levelMm) {
        double low = view.y(base + levelMm.low()) + 1.5;
        double high = view.y(base + levelMm.high()) - 1.5;
        double x = view.x(xMm);
        ink.line(x, low, x, high, palette.ink(), 2.4);
        ink.line(x, low, x + 7, low, palette.ink(), 2.4);
        ink.line(x, high, x + 7, high, palette.ink(), 2.4);
    }

    private void weir(Ink ink, Scene scene) {
        double crest =
                scene.settings().weirCrestMm() + scene.settings().condition().weirSlipMm();
        double clear = scene.point().clearLevelMm();
        double x = section.chamberRightMm - 9;
        ink.span(view.x(x), view.y(crest), view.y(clear), palette.second());
        List<Line> lines = List.of(
                small("picture.crest", Quantity.of(scene.settings().weirCrestMm(), Unit.MILLIMETRE)),
                new Line(
                        words.of("picture.head", Quantity.of(scene.point().headMm(), Unit.MILLIMETRE)),
                        brush.computed(),
                        palette.ink()),
                small("picture.computed"));
        double left = view.x(section.beyondLeftMm + 34);
        double room = view.x(section.beyondRightMm - PIPE_MM) - left;
        List<Line> fitting = wrapped(ink, lines, room);
        write(ink, fitting, left, view.y(section.padTopMm + 22) - height(ink, fitting), false);
    }

    private List<Line> amount(Scene scene) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                words.say(scene.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY), brush.computed(), palette.ink()));
        lines.add(small("picture.computed"));
        scene.expected()
                .ifPresent(each -> lines.add(new Line(
                        words.of("picture.expected", QuantityRange.of(each.mlPerDay(), Unit.MILLILITRE_PER_DAY)),
                        brush.small(),
                        palette.accent())));
        double creep = Sight.of(scene).creepMmPerMin();
        if (creep >= LEAST_CREEP) {
            Quantity speed = Quantity.of(creep, Unit.MILLIMETRE_PER_MINUTE);
            lines.add(small("picture.creep", speed, (int) Sight.CREEP_DRAWN_TIMES));
        }
        Collected collected = scene.collected();
        lines.add(small(
                collected.waste().isPresent() ? "picture.container" : "picture.cup",
                Quantity.of(collected.ml(), Unit.MILLILITRE)));
        if (collected.ml() > 0) {
            lines.add(new Line(words.say(EntryWords.darkness(collected.ptCo())), brush.small(), palette.ink()));
        }
        return lines;
    }

    private List<Line> flows(Scene scene) {
        return List.of(
                small("picture.air", words.say(scene.point().airLitresPerHour(), Unit.LITRE_PER_HOUR)),
                small("picture.flow", words.say(scene.settings().flowLitresPerHour(), Unit.LITRE_PER_HOUR)));
    }

    private record Line(String text, Font font, Color colour) {}

    private Line small(String key, Object... values) {
        return new Line(words.of(key, values), brush.small(), palette.ink());
    }

    /** Lines in the left margin beside a height, under the last ones; where they end. */
    private double left(Ink ink, List<Line> lines, double besideMm, double underPx) {
        double x = view.x(LABEL_RIGHT_MM);
        List<Line> fitting = wrapped(ink, lines, x - 4);
        double high = height(ink, fitting);
        double top = Math.max(underPx + GAP_PX, view.y(besideMm) - high / 2);
        write(ink, fitting, x, top, true);
        return top + high;
    }

    /** Lines that are too wide go on in another one. */
    private static List<Line> wrapped(Ink ink, List<Line> lines, double roomPx) {
        return lines.stream()
                .flatMap(line -> WrappedLine.broken(line.text(), ink.font(line.font()), (int) roomPx).stream()
                        .map(part -> new Line(part, line.font(), line.colour())))
                .toList();
    }

    private static double high(Ink ink, Line line) {
        return ink.font(line.font()).getHeight() * 0.94;
    }

    private static double height(Ink ink, List<Line> lines) {
        return lines.stream().mapToDouble(line -> high(ink, line)).sum();
    }

    /** Lines under each other with a plate behind, ending or beginning at a column. */
    private void write(Ink ink, List<Line> lines, double xPx, double topPx, boolean ends) {
        double wide = lines.stream()
                .mapToDouble(line -> ink.font(line.font()).stringWidth(line.text()))
                .max()
                .orElse(0);
        ink.plate(new Rectangle2D.Double(ends ? xPx - wide : xPx, topPx, wide, height(ink, lines)), palette.paper());
        double top = topPx;
        for (Line line : lines) {
            double base = top + ink.font(line.font()).getAscent();
            if (ends) {
                ink.textRight(line.text(), xPx, base, line.font(), line.colour());
            } else {
                ink.text(line.text(), xPx, base, line.font(), line.colour());
            }
            top += high(ink, line);
        }
    }
}
