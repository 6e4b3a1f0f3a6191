package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws the strip of days: level over amount on one time axis, with wanted bands, things done, and what is expected. */
final class StripChart {
    private static final double LEAST_DAYS = 2;
    private static final double MOST_DAYS = 10;
    private static final double LEAST_ML = 1;

    private final StripData data;
    private final Dress dress;
    private final Palette palette;
    private final ChartStyle style;
    private final double firstDay;
    private final double lastDay;

    StripChart(StripData data, Dress dress, Font font) {
        this.data = data;
        this.dress = dress;
        palette = dress.palette();
        style = new ChartStyle(palette, font);
        DoubleSummaryStatistics told = Stream.concat(
                        data.points().stream().map(History.Point::at),
                        data.seen().stream().map(StripData.Seen::at))
                .mapToDouble(this::day)
                .summaryStatistics();
        double newest = told.getCount() == 0 ? 1 : told.getMax();
        double oldest = told.getCount() == 0 ? 1 : Math.floor(told.getMin());
        double right = Math.max(newest, data.expected().map(e -> day(e.at())).orElse(newest)) + 0.15;
        firstDay = Math.max(Math.min(1, oldest), right - MOST_DAYS);
        lastDay = Math.max(right, firstDay + LEAST_DAYS);
    }

    /** One quantity: its values as they are shown on the axis. */
    private record Curve(
            Shown shown, boolean logarithmic, double[][] run, double[][] seen, Range band, Optional<Range> expected) {}

    void draw(Graphics2D graphics, Rectangle2D area) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(dayAxis(daysApart(graphics, area.getWidth())));
        both.setGap(8);
        both.setOrientation(PlotOrientation.VERTICAL);
        both.add(levelPlot(), 1);
        both.add(amountPlot(), 1);
        style.draw(both, graphics, area);
    }

    private double day(Instant at) {
        return 1 + Duration.between(data.clock().start(), at).toSeconds() / 86400.0;
    }

    /** How many days lie between two that are named, so that the names stand apart. */
    private int daysApart(Graphics2D graphics, double widthPx) {
        String widest =
                data.clock().kind() == Clock.Kind.REAL ? dress.text("strip.date") : dress.text("strip.day") + " 88";
        double namePx = 1.3 * graphics.getFontMetrics(style.small()).stringWidth(widest);
        return (int) Math.max(1, Math.ceil((lastDay - firstDay) * namePx / (0.85 * widthPx)));
    }

    private NumberAxis dayAxis(int daysApart) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(firstDay, lastDay);
        axis.setTickUnit(new NumberTickUnit(daysApart));
        String day = "'" + dress.text("strip.day").replace("'", "''") + " '";
        axis.setNumberFormatOverride(
                data.clock().kind() == Clock.Kind.REAL ? new Dates() : new DecimalFormat(day + "0;" + day + "-0"));
        style.dress(axis);
        return axis;
    }

    /** Days since the start as dates, for a real journal. */
    private final class Dates extends NumberFormat {
        private static final long serialVersionUID = 1L;

        @Override
        public StringBuffer format(double day, StringBuffer to, FieldPosition place) {
            Instant at = data.clock().start().plus(Duration.ofMinutes(Math.round((day - 1) * 1440)));
            Locale locale = dress.words().book().locale();
            return to.append(DateTimeFormatter.ofPattern(dress.text("strip.date"), locale)
                    .format(at.atZone(data.clock().wall().orElse(ZoneOffset.UTC))));
        }

        @Override
        public StringBuffer format(long day, StringBuffer to, FieldPosition place) {
            return format((double) day, to, place);
        }

        @Override
        public Number parse(String text, ParsePosition place) {
            throw new UnsupportedOperationException("an axis is only read");
        }
    }

    private XYPlot levelPlot() {
        Shown mm = new Shown(Unit.MILLIMETRE, dress.words().book().units());
        Curve curve = new Curve(
                mm,
                false,
                run(mm, point -> point.submergenceMm()),
                seen(mm, seen -> seen.submergenceMm(), -1e9),
                mm.of(data.bandMm()),
                data.expected().map(e -> mm.of(e.submergenceMm())));
        NumberAxis axis = new NumberAxis();
        style.dress(axis);
        Range around = spread(curve);
        double slack = Math.max(mm.of(4.0), 0.15 * around.width());
        axis.setRange(around.low() - slack, around.high() + slack);
        XYPlot plot = plot(axis, curve, palette.accent(), false);
        style.name(plot, dress.text("strip.level", mm.symbol()));
        return plot;
    }

    private XYPlot amountPlot() {
        Shown perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
        double least = perDay.of(LEAST_ML);
        Curve curve = new Curve(
                perDay,
                true,
                run(perDay, point -> Math.max(LEAST_ML, point.skimmateMlPerDay())),
                seen(perDay, StripData.Seen::skimmateMlPerDay, least),
                perDay.of(data.bandMlPerDay()),
                data.expected()
                        .map(e -> new Range(
                                Math.max(LEAST_ML, e.skimmateMlPerDay().low()),
                                Math.max(LEAST_ML, e.skimmateMlPerDay().high())))
                        .map(perDay::of));
        LogAxis axis = style.logAxis();
        Range around = spread(curve);
        axis.setRange(Math.max(least, around.low() * 0.7), around.high() * 2.2);
        XYPlot plot = plot(axis, curve, palette.second(), true);
        style.name(plot, dress.text("strip.amount", perDay.symbol()));
        data.marks().stream().filter(mark -> day(mark.at()) >= firstDay).forEach(mark -> label(plot, mark));
        return plot;
    }

    private double[][] run(Shown shown, ToDoubleFunction<History.Point> value) {
        return data.points().stream()
                .filter(point -> day(point.at()) >= firstDay)
                .map(point -> new double[] {day(point.at()), shown.of(value.applyAsDouble(point))})
                .toArray(double[][]::new);
    }

    private double[][] seen(Shown shown, ToDoubleFunction<StripData.Seen> value, double least) {
        return data.seen().stream()
                .filter(seen -> day(seen.at()) >= firstDay && Double.isFinite(value.applyAsDouble(seen)))
                .map(seen -> new double[] {day(seen.at()), Math.max(least, shown.of(value.applyAsDouble(seen)))})
                .toArray(double[][]::new);
    }

    /** The range that holds band, run, readings and expectation. */
    private static Range spread(Curve curve) {
        DoubleStream ends = DoubleStream.of(curve.band().low(), curve.band().high());
        DoubleStream next =
                curve.expected().stream().flatMapToDouble(range -> DoubleStream.of(range.low(), range.high()));
        DoubleStream lines = Stream.of(curve.run()).mapToDouble(point -> point[1]);
        DoubleStream dots = Stream.of(curve.seen()).mapToDouble(point -> point[1]);
        DoubleSummaryStatistics all = Stream.of(ends, next, lines, dots)
                .flatMapToDouble(values -> values)
                .summaryStatistics();
        return new Range(all.getMin(), all.getMax());
    }

    private XYPlot plot(ValueAxis axis, Curve curve, Color colour, boolean dashed) {
        XYSeriesCollection series = new XYSeriesCollection();
        series.addSeries(series("run", curve.run()));
        series.addSeries(series("seen", curve.seen()));
        XYPlot plot = new XYPlot(series, null, axis, renderer(colour, dashed));
        style.dress(plot);
        plot.addRangeMarker(style.band(curve.band(), dress.text("strip.wanted")), Layer.BACKGROUND);
        BasicStroke dotted = new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {2, 3}, 0);
        for (StripData.Mark mark : data.marks()) {
            plot.addDomainMarker(new ValueMarker(day(mark.at()), palette.muted(), dotted), Layer.BACKGROUND);
        }
        data.expected()
                .ifPresent(e -> expected(plot, day(e.at()), curve.expected().orElseThrow()));
        return plot;
    }

    private static XYSeries series(String name, double[][] points) {
        XYSeries series = new XYSeries(name, false, true);
        for (double[] point : List.of(points)) {
            series.add(point[0], point[1]);
        }
        return series;
    }

    private void label(XYPlot plot, StripData.Mark mark) {
        ValueMarker moved = new ValueMarker(day(mark.at()), new Color(0, 0, 0, 0), new BasicStroke(0.1f));
        moved.setLabel(mark.label());
        moved.setLabelFont(style.small());
        moved.setLabelPaint(palette.ink());
        moved.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        boolean late = day(mark.at()) > firstDay + 0.8 * (lastDay - firstDay);
        moved.setLabelAnchor(late ? RectangleAnchor.BOTTOM_LEFT : RectangleAnchor.BOTTOM_RIGHT);
        moved.setLabelTextAnchor(late ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
        plot.addDomainMarker(moved, Layer.FOREGROUND);
    }

    private XYLineAndShapeRenderer renderer(Color colour, boolean dashed) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        renderer.setSeriesLinesVisible(0, true);
        renderer.setSeriesShapesVisible(0, false);
        renderer.setSeriesPaint(0, colour);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesStroke(
                0,
                dashed
                        ? new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 3}, 0)
                        : new BasicStroke(2));
        renderer.setSeriesLinesVisible(1, false);
        renderer.setSeriesShapesVisible(1, true);
        renderer.setSeriesShape(1, new Ellipse2D.Double(-3.5, -3.5, 7, 7));
        renderer.setSeriesPaint(1, palette.ink());
        renderer.setSeriesFillPaint(1, palette.paper());
        renderer.setUseFillPaint(true);
        return renderer;
    }

    /** A bar with ends over the range in which the next reading should lie. */
    private void expected(XYPlot plot, double x, Range range) {
        BasicStroke stroke = new BasicStroke(2.4f);
        double half = 0.006 * (lastDay - firstDay);
        plot.addAnnotation(new XYLineAnnotation(x, range.low(), x, range.high(), stroke, palette.ink()));
        plot.addAnnotation(new XYLineAnnotation(x - half, range.low(), x + half, range.low(), stroke, palette.ink()));
        plot.addAnnotation(new XYLineAnnotation(x - half, range.high(), x + half, range.high(), stroke, palette.ink()));
    }
}
