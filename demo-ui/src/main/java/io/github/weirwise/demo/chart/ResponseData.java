package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * What the unit gives once settled at each height of the weir, all else as it is, on axes that belong to the unit and stay.
 *
 * @param unit whose travel of the weir and wanted amount make the axes
 * @param points crests from low to high
 * @param before the same before another knob than the weir was turned; the same points when none was
 * @param today where the weir stands, and what it gives once settled
 * @param nowMlPerDay what comes now
 */
public record ResponseData(SkimmerUnit unit, List<Point> points, List<Point> before, Point today, double nowMlPerDay)
        implements Drawing {
    private static final double LEAST_OF_WANTED = 1 / 100.0;
    private static final double MOST_OF_WANTED = 40;

    /** Copies the lists. */
    public ResponseData {
        points = List.copyOf(points);
        before = List.copyOf(before);
    }

    /** The unit at rest at one crest. */
    public record Point(double crestMm, double submergenceMm, double skimmateMlPerDay, double darknessPtCo) {}

    /** Wanted amounts. */
    public Range bandMlPerDay() {
        return unit.target().skimmateBandMlPerDay();
    }

    /** Amounts that the axis shows, whatever the knobs say. */
    Range axisMlPerDay() {
        double wanted = unit.target().skimmateMlPerDay();
        return new Range(LEAST_OF_WANTED * wanted, MOST_OF_WANTED * wanted);
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        new ResponseChart(this, dress, font).draw(graphics, area);
    }

    @Override
    public String describe(Words words) {
        Point low = points.get(0);
        Point high = points.get(points.size() - 1);
        return words.of(
                "response.describe",
                Quantity.of(low.crestMm(), Unit.MILLIMETRE),
                Quantity.of(low.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(high.crestMm(), Unit.MILLIMETRE),
                Quantity.of(high.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                Quantity.of(today.crestMm(), Unit.MILLIMETRE),
                Quantity.of(today.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY));
    }

    @Override
    public List<String> columns(Words words) {
        return List.of(
                words.of("response.column.crest"),
                words.of("response.column.level"),
                words.of("response.column.amount"),
                words.of("response.column.darkness"));
    }

    @Override
    public List<List<String>> rows(Words words) {
        return points.stream()
                .map(point -> List.of(
                        words.say(point.crestMm(), Unit.MILLIMETRE),
                        words.say(point.submergenceMm(), Unit.MILLIMETRE),
                        words.say(point.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                        words.say(point.darknessPtCo(), Unit.PLATINUM_COBALT)))
                .toList();
    }
}
