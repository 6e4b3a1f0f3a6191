package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.picture.Lines.Line;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Numbers where they belong: submergence at the funnel, head at the weir, amount and darkness at the cup. */
final class LabelPainter extends Painter {
    /** Labels on the left end here, beside the drain hose. */
    private static final double LABEL_RIGHT_MM = -22;

    /** The return pump's pipe stands so far from the right end. */
    private static final double PIPE_MM = 24;
    /** What is written over that pipe ends so far over the wall beside it. */
    private static final double OVER_PIPE_MM = 40;

    private static final double GAP_PX = 7;
    private static final double LEAST_CREEP = 0.5;

    LabelPainter(Brush brush) {
        super(brush);
    }

    /** Marks of the wanted levels and of the funnel base, and the figures. */
    void paint(Ink ink, Scene scene, NamePainter names) {
        band(ink, scene);
        base(ink);
        if (!scene.figures()) {
            return;
        }
        level(ink, scene);
        head(ink, scene);
        double inlet = view.x(18);
        ink.arrow(inlet, view.y(section.wallTopMm - 6), inlet, view.y(section.wallTopMm - 34), palette.accent(), 2);
        margin(ink, scene, names);
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
                spare("picture.computed"),
                mm < 0 ? small("picture.below") : spare("picture.over"));
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

    private void head(Ink ink, Scene scene) {
        double crest =
                scene.settings().weirCrestMm() + scene.settings().condition().weirSlipMm();
        double x = view.x(section.chamberRightMm - 9);
        ink.span(x, view.y(crest), view.y(scene.point().clearLevelMm()), palette.second());
    }

    /** Crest and head, to stand between weir and pipe. */
    private Lines weir(Ink ink, Scene scene) {
        return weir(scene).wrapped(ink, view.x(section.beyondRightMm - PIPE_MM) - weirLabelPx());
    }

    /** Where crest and head begin when they stand there. */
    double weirTopPx(Ink ink, Scene scene) {
        return view.y(section.padTopMm + 22) - weir(ink, scene).highPx(ink);
    }

    /** Writes crest and head between weir and pipe, or over the pipe where nothing else is. */
    void weir(Ink ink, Scene scene, boolean overPipe) {
        Lines label = overPipe ? weir(scene) : weir(ink, scene);
        double top =
                overPipe ? view.y(section.beyondWallTopMm + OVER_PIPE_MM) - label.highPx(ink) : weirTopPx(ink, scene);
        label.write(ink, weirLabelPx(), top, false, palette.paper());
    }

    private double weirLabelPx() {
        return view.x(section.beyondLeftMm + 34);
    }

    private Lines weir(Scene scene) {
        return new Lines(List.of(
                small("picture.crest", Quantity.of(scene.settings().weirCrestMm(), Unit.MILLIMETRE)),
                new Line(
                        words.of("picture.head", Quantity.of(scene.point().headMm(), Unit.MILLIMETRE)),
                        brush.computed(),
                        palette.ink()),
                spare("picture.computed")));
    }

    private List<Line> amount(Scene scene) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                words.say(scene.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY), brush.computed(), palette.ink()));
        lines.add(spare("picture.computed"));
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

    private Line small(String key, Object... values) {
        return new Line(words.of(key, values), brush.small(), palette.ink());
    }

    /** What the letters of the number or the drawing tell too. */
    private Line spare(String key) {
        return new Line(words.of(key), brush.small(), palette.ink(), true);
    }

    /** Amount, flows and level in the left margin, each beside what it is of as far as there is room over what is named below. */
    private void margin(Ink ink, Scene scene, NamePainter names) {
        double right = Math.min(view.x(LABEL_RIGHT_MM), names.leftOfAirLinePx(ink) - GAP_PX);
        double foot = names.topLeftOfPx(right).orElse(view.y(section.floorMm)) - GAP_PX;
        double level = section.column().funnelBaseMm() + scene.point().submergenceMm() / 2;
        double[] besideMm = {section.lipMm(), section.wallTopMm + 14, level};
        List<Lines> labels = Stream.of(amount(scene), flows(scene), submergence(scene))
                .map(each -> new Lines(each).wrapped(ink, right - GAP_PX))
                .toList();
        if (highPx(ink, labels) > foot) {
            labels = labels.stream().map(Lines::needed).toList();
        }
        double under = 0;
        for (int i = 0; i < labels.size(); i++) {
            double latest = foot - highPx(ink, labels.subList(i, labels.size()));
            double beside = view.y(besideMm[i]) - labels.get(i).highPx(ink) / 2;
            double top = Math.max(under + GAP_PX, Math.min(beside, latest));
            labels.get(i).write(ink, right, top, true, palette.paper());
            under = top + labels.get(i).highPx(ink);
        }
    }

    private static double highPx(Ink ink, List<Lines> labels) {
        return labels.stream().mapToDouble(each -> each.highPx(ink) + GAP_PX).sum();
    }
}
