package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Numbers where they belong: submergence at the funnel, head at the weir, amount and darkness at the cup. */
final class LabelPainter {
    /** Labels on the left end here, beside the drain hose. */
    private static final double LABEL_RIGHT_MM = -22;

    private static final double MOST_SHRUNK = 0.88;
    private static final double LEAST_CREEP = 0.5;

    private final Brush brush;
    private final Section section;
    private final View view;
    private final Palette palette;
    private final Words words;

    LabelPainter(Brush brush) {
        this.brush = brush;
        section = brush.section();
        view = brush.view();
        palette = brush.palette();
        words = brush.words();
    }

    void paint(Ink ink, Scene scene) {
        band(ink, scene);
        base(ink);
        if (!scene.figures()) {
            return;
        }
        funnel(ink, scene);
        weir(ink, scene);
        cup(ink, scene);
        flows(ink, scene);
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

    private void funnel(Ink ink, Scene scene) {
        double base = section.column().funnelBaseMm();
        double level = base + scene.point().submergenceMm();
        double left = section.axisMm - section.radiusMm;
        double right = section.axesMm.get(section.axesMm.size() - 1) + section.radiusMm;
        ink.line(view.x(left - 24), view.y(level), view.x(right + 2), view.y(level), palette.accent(), 2.4);
        ink.span(view.x(left - 21), view.y(base), view.y(level), palette.accent());
        double x = view.x(LABEL_RIGHT_MM);
        double s = scene.point().submergenceMm();
        scene.expected().ifPresent(each -> expected(ink, left - 32, base, each.levelMm()));
        List<Line> lines = List.of(
                new Line(words.say(Math.abs(s), Unit.MILLIMETRE), brush.computed(), true),
                new Line(words.of(s < 0 ? "picture.below" : "picture.over"), brush.small(), false),
                new Line(words.of("picture.funnelBase"), brush.small(), false),
                new Line(words.of("picture.computed"), brush.small(), false));
        double underFlows = view.y(section.wallTopMm + 14) + brush.font().getSize2D() * 5.5;
        block(ink, lines, x, Math.max(underFlows, view.y((base + level) / 2)), true);
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
                new Line(words.of("picture.head", quantity(scene.point().headMm())), brush.bold(), false),
                new Line(words.of("picture.crest", quantity(scene.settings().weirCrestMm())), brush.small(), false));
        block(ink, lines, view.x(section.beyondLeftMm + 44), view.y(section.padTopMm + 44), false);
    }

    private static Quantity quantity(double mm) {
        return Quantity.of(mm, Unit.MILLIMETRE);
    }

    private void cup(Ink ink, Scene scene) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(words.say(scene.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY), brush.computed(), false));
        lines.add(new Line(words.of("picture.computed"), brush.small(), false));
        scene.expected()
                .ifPresent(each -> lines.add(new Line(
                        words.of("picture.expected", QuantityRange.of(each.mlPerDay(), Unit.MILLILITRE_PER_DAY)),
                        brush.small(),
                        true)));
        double creep = Sight.of(scene).creepMmPerMin();
        if (creep >= LEAST_CREEP) {
            lines.add(new Line(
                    words.of("picture.creep", Quantity.of(creep, Unit.MILLIMETRE_PER_MINUTE)), brush.small(), false));
            lines.add(new Line(words.of("picture.creep.drawn", (int) Sight.CREEP_DRAWN_TIMES), brush.small(), false));
        }
        if (scene.collected().ml() > 0) {
            double ptCo = scene.collected().ptCo();
            lines.add(new Line(words.say(EntryWords.darkness(ptCo)), brush.small(), false));
            lines.add(new Line(words.say(ptCo, Unit.PLATINUM_COBALT), brush.small(), false));
        }
        String where = scene.collected().waste().isPresent() ? "picture.container" : "picture.cup";
        lines.add(
                new Line(words.of(where, Quantity.of(scene.collected().ml(), Unit.MILLILITRE)), brush.small(), false));
        block(ink, lines, view.x(LABEL_RIGHT_MM), view.y(section.lipMm() + 2), true);
    }

    private void flows(Ink ink, Scene scene) {
        double inletX = view.x(18);
        double top = view.y(section.wallTopMm + 14);
        ink.arrow(inletX, view.y(section.wallTopMm - 6), inletX, view.y(section.wallTopMm - 34), palette.accent(), 2);
        double right = view.x(LABEL_RIGHT_MM);
        double line = brush.font().getSize2D() * 1.3;
        block(
                ink,
                List.of(
                        new Line(
                                words.of(
                                        "picture.air",
                                        words.say(scene.point().airLitresPerHour(), Unit.LITRE_PER_HOUR)),
                                brush.small(),
                                false),
                        new Line(
                                words.of(
                                        "picture.flow",
                                        words.say(scene.settings().flowLitresPerHour(), Unit.LITRE_PER_HOUR)),
                                brush.small(),
                                false)),
                right,
                top + line / 2,
                true);
    }

    private record Line(String text, Font font, boolean accent) {}

    /** Lines under each other, centred in height on a row, with a plate behind; wide ones are set smaller. */
    private void block(Ink ink, List<Line> given, double xPx, double yPx, boolean right) {
        double room = right ? xPx - 4 : Double.MAX_VALUE;
        List<Line> wanted =
                given.stream().flatMap(line -> broken(ink, line, room).stream()).toList();
        double widest = wanted.stream()
                .filter(line -> line.font().equals(brush.small()))
                .mapToDouble(line -> ink.font(line.font()).stringWidth(line.text()))
                .max()
                .orElse(0);
        Font small = widest <= room ? brush.small() : shrunk(brush.small(), room / widest);
        List<Line> lines = wanted.stream()
                .map(line -> line.font().equals(brush.small())
                        ? new Line(line.text(), small, line.accent())
                        : fitted(ink, line, room))
                .toList();
        double height = 0;
        double width = 0;
        for (Line line : lines) {
            FontMetrics metrics = ink.font(line.font());
            height += metrics.getHeight() * 0.94;
            width = Math.max(width, metrics.stringWidth(line.text()));
        }
        double top = yPx - height / 2;
        ink.plate(new Rectangle2D.Double(right ? xPx - width : xPx, top, width, height), palette.paper());
        for (Line line : lines) {
            FontMetrics metrics = ink.font(line.font());
            double base = top + metrics.getAscent();
            Color colour = line.accent() ? palette.accent() : palette.ink();
            if (right) {
                ink.textRight(line.text(), xPx, base, line.font(), colour);
            } else {
                ink.text(line.text(), xPx, base, line.font(), colour);
            }
            top += metrics.getHeight() * 0.94;
        }
    }

    /** A small line that would have to be set much smaller to fit goes on in a second one. */
    private List<Line> broken(Ink ink, Line line, double roomPx) {
        FontMetrics metrics = ink.font(line.font());
        if (!line.font().equals(brush.small()) || MOST_SHRUNK * metrics.stringWidth(line.text()) <= roomPx) {
            return List.of(line);
        }
        int cut = line.text().lastIndexOf(' ');
        while (cut > 0 && metrics.stringWidth(line.text().substring(0, cut)) > roomPx) {
            cut = line.text().lastIndexOf(' ', cut - 1);
        }
        return cut <= 0
                ? List.of(line)
                : List.of(
                        new Line(line.text().substring(0, cut), line.font(), line.accent()),
                        new Line(line.text().substring(cut + 1), line.font(), line.accent()));
    }

    private static Line fitted(Ink ink, Line line, double roomPx) {
        double width = ink.font(line.font()).stringWidth(line.text());
        if (width <= roomPx) {
            return line;
        }
        return new Line(line.text(), shrunk(line.font(), roomPx / width), line.accent());
    }

    private static Font shrunk(Font font, double share) {
        return font.deriveFont((float) (font.getSize2D() * share));
    }
}
