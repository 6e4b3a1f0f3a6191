package io.github.weirwise.demo.chart;

import io.github.weirwise.report.Range;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyLaw;
import java.util.ArrayList;
import java.util.List;

/**
 * What the unit would give at rest at each height of the weir, all else as it is.
 *
 * @param points crests from low to high
 * @param todayCrestMm where the weir stands
 * @param bandMlPerDay wanted amounts
 */
public record ResponseData(List<Point> points, double todayCrestMm, Range bandMlPerDay) {
    private static final double REACH_MM = 20;
    private static final double STEP_MM = 1;

    /** Copies the list. */
    public ResponseData {
        points = List.copyOf(points);
    }

    /** The unit at rest at one crest. */
    public record Point(double crestMm, double submergenceMm, double skimmateMlPerDay, double darknessPtCo) {}

    /** Works it out round the crest as it stands. */
    public static ResponseData of(SkimmerUnit unit, Settings settings) {
        SteadyLaw law = new SteadyLaw(unit);
        List<Point> points = new ArrayList<>();
        double low = unit.weir().clampMm(Math.floor(settings.weirCrestMm()) - REACH_MM);
        double high = unit.weir().clampMm(Math.floor(settings.weirCrestMm()) + REACH_MM);
        for (double crest = low; crest <= high; crest += STEP_MM) {
            OperatingPoint point = OperatingPoint.of(unit, settings.withWeirCrestMm(crest), law);
            points.add(new Point(crest, point.submergenceMm(), point.skimmateMlPerDay(), point.darknessPtCo()));
        }
        return new ResponseData(points, settings.weirCrestMm(), unit.target().skimmateBandMlPerDay());
    }

    /** The point nearest to where the weir stands. */
    public Point today() {
        Point nearest = points.get(0);
        for (Point point : points) {
            if (Math.abs(point.crestMm() - todayCrestMm) < Math.abs(nearest.crestMm() - todayCrestMm)) {
                nearest = point;
            }
        }
        return nearest;
    }
}
