package io.github.weirwise.demo.chart;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.SkimmerUnit;
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
public record ResponseData(SkimmerUnit unit, List<Point> points, List<Point> before, Point today, double nowMlPerDay) {
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
}
