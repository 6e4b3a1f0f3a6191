package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.panel.Stairs;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.OperatingPoint;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How the level adds up, drawn as stairs against the funnel base: crest, plus head, plus gas lift, less foam and cup
 * pressure, and there the level is. The same sum that the library solves.
 */
final class StairsPainter extends Painter {
    StairsPainter(Brush brush) {
        super(brush);
    }

    void paint(Ink ink, Scene scene, Rectangle2D box) {
        double base = section.column().funnelBaseMm();
        OperatingPoint point = scene.point();
        double clear = point.clearLevelMm() - base;
        double lifted = clear + point.gasLiftMm();
        double level = point.submergenceMm();
        List<Stairs.Step> steps = List.of(
                step("crest", clear - point.headMm()),
                step("head", point.headMm()),
                step("gas", point.gasLiftMm()),
                step("foam", level - lifted));
        double line = brush.font().getSize2D() * 1.2;
        ink.plate(box, palette.paper());
        ink.text(words.of("picture.stairs"), box.getX() + 2, box.getY() + line, brush.bold(), palette.ink());
        ink.text(
                words.of(
                        "picture.stairs.unit",
                        Unit.MILLIMETRE.symbol(words.book().units())),
                box.getX() + 2,
                box.getY() + 2 * line,
                brush.small(),
                palette.muted());
        double heading = 2.4 * line;
        new Stairs(steps, scene.bandMm(), words.of("strip.wanted"), words.say(level, Unit.MILLIMETRE))
                .draw(
                        ink.graphics(),
                        new Rectangle2D.Double(
                                box.getX() + 2, box.getY() + heading, box.getWidth() - 4, box.getHeight() - heading),
                        palette,
                        brush.small());
    }

    private Stairs.Step step(String term, double mm) {
        String number = words.book().number(mm, Unit.MILLIMETRE);
        return new Stairs.Step(
                words.of("picture.stairs." + term), mm > 0 ? "+" + number : number, mm, new Range(mm, mm));
    }
}
