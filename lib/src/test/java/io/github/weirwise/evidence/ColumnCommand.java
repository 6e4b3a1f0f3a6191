package io.github.weirwise.evidence;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.ColumnAssumptions;
import io.github.weirwise.unit.ColumnDetail;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.ReferenceColumn;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Command {@code column}: skimmate by the fast form and by the column's sketch against the full foam column, over random
 * points of the working box and over single moves of the three default units; writes its part of docs/reference/model.md. Property {@code points}
 * asks for more points.
 */
final class ColumnCommand {
    private static final ColumnAssumptions FULL = ColumnAssumptions.DEFAULT;
    private static final ColumnAssumptions SKETCH = FULL.withDetail(ColumnDetail.SKETCH);
    private static final int FEWEST_POINTS = 500;
    private static final double LEAST = 0.02;
    private static final double MOST = 20;
    private static final double OFF = 0.15;
    private static final double[] EDGES = {LEAST, 0.1, 0.4, 2.4, 10, MOST};

    /** Skimmate of one point over the wanted amount by each form, and the factor of which the fast form warns, or 1. */
    private record Point(double full, double fast, double sketch, double factor) {
        double fastError() {
            return Math.abs(fast / full - 1);
        }

        double sketchError() {
            return Math.abs(sketch / full - 1);
        }

        boolean off() {
            return fastError() > OFF;
        }

        boolean silent() {
            return off() && factor == 1;
        }

        boolean covered() {
            double apart = Math.abs(Math.log(fast / full));
            return apart <= Math.max(Math.log(1 + OFF), Math.log(factor));
        }
    }

    private final WorkingBox box = new WorkingBox(Long.getLong("seed", 1));
    private final List<Point> points = new ArrayList<>();
    private int outside;
    private int unfitted;

    private ColumnCommand() {}

    static void run(String[] options) throws IOException {
        ColumnCommand command = new ColumnCommand();
        int wanted = Math.max(FEWEST_POINTS, Integer.getInteger("points", 600));
        while (command.points.size() < wanted) {
            command.add(command.box.next());
        }
        command.print();
    }

    private void add(WorkingBox.Case drawn) {
        SkimmerUnit full;
        SkimmerUnit sketch;
        try {
            full = ReferenceColumn.withFittedLife(drawn.unit(), drawn.anchor(), FULL);
            sketch = ReferenceColumn.withFittedLife(drawn.unit(), drawn.anchor(), SKETCH);
        } catch (IllegalArgumentException e) {
            unfitted++;
            return;
        }
        double target = drawn.unit().target().skimmateMlPerDay();
        ReferenceColumn column = ReferenceColumn.of(drawn.moved(full), drawn.moved(), FULL);
        double ratio = column.skimmateMlPerDay() / target;
        if (column.flooded() || ratio < LEAST || ratio > MOST) {
            outside++;
            return;
        }
        OperatingPoint fast = OperatingPoint.of(drawn.moved(drawn.unit()), drawn.moved());
        double sketched =
                ReferenceColumn.of(drawn.moved(sketch), drawn.moved(), SKETCH).skimmateMlPerDay();
        points.add(new Point(ratio, fast.skimmateMlPerDay() / target, sketched / target, factor(fast)));
    }

    private static double factor(OperatingPoint point) {
        for (Warning warning : point.warnings()) {
            if (warning.text().key().equals("unit.farFromTarget")) {
                return ((Quantity) warning.text().values().get(0)).value();
            }
        }
        return 1;
    }

    /** One thing moves from the wanted level of each default unit. */
    private static String singleMoves() {
        StringBuilder table = new StringBuilder("""
                Skimmate over the wanted amount when one thing moves: full column (fast form, sketch). Each form has its own mean
                life, fitted so that all three give the wanted amount at the wanted level.

                | moved | small | middle | large |
                |---|---|---|---|
                """);
        for (int mm : new int[] {-4, -2, 2, 4, 10}) {
            table.append(move(String.format("weir %+d mm", mm), mm, 1, 1));
        }
        for (double share : new double[] {0.9, 0.95, 1.05, 1.1}) {
            table.append(move(String.format(Locale.ROOT, "air x %.2f", share), 0, share, 1));
        }
        for (double share : new double[] {0.9, 0.95, 1.05, 1.1}) {
            table.append(move(String.format(Locale.ROOT, "life x %.2f", share), 0, 1, share));
        }
        return table.toString();
    }

    private static String move(String name, double mm, double air, double life) {
        StringBuilder row = new StringBuilder("| " + name);
        for (SkimmerUnit unit : WorkingBox.defaults()) {
            Settings anchor = WorkingBox.anchor(unit);
            Settings moved = anchor.withWeirCrestMm(anchor.weirCrestMm() + mm)
                    .withAirLitresPerHour(air * anchor.airLitresPerHour());
            WorkingBox.Case one = new WorkingBox.Case(unit, anchor, moved, life);
            SkimmerUnit full = ReferenceColumn.withFittedLife(unit, anchor, FULL);
            SkimmerUnit sketch = ReferenceColumn.withFittedLife(unit, anchor, SKETCH);
            double target = unit.target().skimmateMlPerDay();
            row.append(String.format(
                    Locale.ROOT,
                    " | %.3g (%.3g, %.3g)",
                    ReferenceColumn.of(one.moved(full), moved, FULL).skimmateMlPerDay() / target,
                    WorkingBox.fast(one.moved(unit), moved) / target,
                    ReferenceColumn.of(one.moved(sketch), moved, SKETCH).skimmateMlPerDay() / target));
        }
        return row + " |\n";
    }

    private String wholeBox() {
        StringBuilder table = new StringBuilder(String.format(
                Locale.ROOT,
                """

                Error of the skimmate over %d random points of the working box. A case is one of the three units with a neck 0.85 to 1.2
                times as wide and 0.7 to 1.4 times as high, fresh bubbles of 0.6 to 1.0 mm, lip bubbles of 1.6 to 3.0 mm and a wanted level up
                to 5 mm from the usual one. Each form's mean life is fitted so that it gives the wanted amount there: that is the anchor.
                Then the weir moves by up to %.0f mm, the air by up to %.0f %%, the mean life by up to %.0f %%, all at once and for all forms by
                the same. Points at which the full column gives under %.2f or over %.0f times the wanted amount, or floods, are states and not
                amounts, and are left out (%d); cases without a fitting life: %d.

                | full column's amount, over the wanted | points | fast form: median %%, nine tenths under, worst | sketch: median %%, \
                nine tenths under, worst |
                |---|---|---|---|
                """,
                points.size(),
                WorkingBox.WEIR_MM,
                100 * WorkingBox.AIR_SHARE,
                100 * WorkingBox.LIFE_SHARE,
                LEAST,
                MOST,
                outside,
                unfitted));
        for (int i = 0; i + 1 < EDGES.length; i++) {
            double low = EDGES[i];
            double high = EDGES[i + 1];
            table.append(row(
                    String.format(Locale.ROOT, "%.2f to %.2f", low, high),
                    points.stream()
                            .filter(point -> point.full >= low && point.full < high)
                            .toList()));
        }
        table.append(row("all", points));
        return table.append(String.format(
                        Locale.ROOT,
                        """

                        The fast form is off by more than 15 %% at %d of the points; at %d of them its result does not warn. The factor that the \
                        warning names covers the full column's amount at %d points of %d.
                        """,
                        count(Point::off),
                        count(Point::silent),
                        count(Point::covered),
                        points.size()))
                .toString();
    }

    private void print() throws IOException {
        String text = singleMoves() + wholeBox();
        System.out.println(text);
        new DocumentPart(Path.of("docs", "reference", "model.md"), "column").write(text);
        System.out.printf(
                Locale.ROOT,
                "result: points=%d medianErrorPct=%.2f worstErrorPct=%.1f sketchMedianErrorPct=%.2f"
                        + " sketchWorstErrorPct=%.1f offWithoutWarning=%d coveredPct=%.2f%n",
                points.size(),
                percentile(points, Point::fastError, 0.5),
                percentile(points, Point::fastError, 1),
                percentile(points, Point::sketchError, 0.5),
                percentile(points, Point::sketchError, 1),
                count(Point::silent),
                100.0 * count(Point::covered) / points.size());
    }

    private long count(Predicate<Point> kind) {
        return points.stream().filter(kind).count();
    }

    private static String row(String name, List<Point> some) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f, %.1f, %.1f | %.1f, %.1f, %.1f |%n",
                name,
                some.size(),
                percentile(some, Point::fastError, 0.5),
                percentile(some, Point::fastError, 0.9),
                percentile(some, Point::fastError, 1),
                percentile(some, Point::sketchError, 0.5),
                percentile(some, Point::sketchError, 0.9),
                percentile(some, Point::sketchError, 1));
    }

    /** In per cent. */
    private static double percentile(List<Point> some, ToDoubleFunction<Point> error, double share) {
        double[] sorted = some.stream().mapToDouble(error).toArray();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : 100 * sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
