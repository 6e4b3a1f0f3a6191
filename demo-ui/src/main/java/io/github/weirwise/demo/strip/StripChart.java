package io.github.weirwise.demo.strip;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Range;
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
import java.util.DoubleSummaryStatistics;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTitleAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.ui.VerticalAlignment;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws the strip: level over amount on one time axis, with wanted bands, things done, and what is expected next. */
final class StripChart {
    private static final double LEAST_DAYS = 2;
    private static final double MOST_DAYS = 10;
    private static final double LEAST_ML = 1;

    private final StripData data;
    private final Words words;
    private final Palette palette;
    private final Font font;

    StripChart(StripData data, Words words, Palette palette, Font font) {
        this.data = data;
        this.words = words;
        this.palette = palette;
        this.font = font;
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(dayAxis());
        both.setGap(8);
        both.setOrientation(PlotOrientation.VERTICAL);
        both.add(levelPlot(), 1);
        both.add(amountPlot(), 1);
        JFreeChart chart = new JFreeChart(null, font, both, false);
        chart.setBackgroundPaint(palette.paper());
        chart.setPadding(new RectangleInsets(2, 2, 0, 6));
        chart.setAntiAlias(true);
        chart.draw(graphics, area);
    }

    private double day(Instant at) {
        return 1 + Duration.between(data.start(), at).toSeconds() / 86400.0;
    }

    private NumberAxis dayAxis() {
        NumberAxis axis = new NumberAxis(words.of("strip.day"));
        axis.setAutoRangeIncludesZero(false);
        double last = data.points().isEmpty()
                ? 1
                : day(data.points().get(data.points().size() - 1).at());
        double right = Math.max(last, data.expected().map(e -> day(e.at())).orElse(last)) + 0.15;
        double left = Math.max(1, right - MOST_DAYS);
        axis.setRange(left, Math.max(right, left + LEAST_DAYS));
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new DecimalFormat("0"));
        dress(axis);
        return axis;
    }

    private XYPlot levelPlot() {
        NumberAxis axis = new NumberAxis();
        dress(axis);
        Range around = spread(data.bandMm(), Reads::submergence, StripData.Seen::submergenceMm, Expected::level);
        axis.setRange(around.low() - 3, around.high() + 5);
        XYPlot plot =
                plot(axis, data.bandMm(), Reads::submergence, StripData.Seen::submergenceMm, palette.accent(), false);
        name(plot, words.of("strip.level"), palette.accent());
        data.expected().ifPresent(e -> expected(plot, e.at(), e.submergenceMm()));
        return plot;
    }

    private XYPlot amountPlot() {
        LogAxis axis = new LogAxis();
        axis.setSmallestValue(LEAST_ML);
        axis.setNumberFormatOverride(new PlainNumbers());
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setMinorTickMarksVisible(false);
        dress(axis);
        Range around = spread(data.bandMlPerDay(), Reads::amount, StripData.Seen::skimmateMlPerDay, Expected::amount);
        axis.setRange(Math.max(LEAST_ML, around.low() * 0.7), around.high() * 2.2);
        XYPlot plot = plot(
                axis, data.bandMlPerDay(), Reads::amount, StripData.Seen::skimmateMlPerDay, palette.second(), true);
        name(plot, words.of("strip.amount"), palette.second());
        data.expected().ifPresent(e -> expected(plot, e.at(), e.skimmateMlPerDay()));
        data.marks().forEach(mark -> label(plot, mark));
        return plot;
    }

    /** The range that holds band, run, readings and expectation. */
    private Range spread(
            Range band,
            ToDoubleFunction<History.Point> run,
            ToDoubleFunction<StripData.Seen> seen,
            Function<StripData.Expected, Range> expected) {
        DoubleStream ends = DoubleStream.of(band.low(), band.high());
        DoubleStream lines = data.points().stream().mapToDouble(run);
        DoubleStream dots = data.seen().stream().mapToDouble(seen).filter(Double::isFinite);
        DoubleStream next = data.expected().stream()
                .map(expected)
                .flatMapToDouble(range -> DoubleStream.of(range.low(), range.high()));
        DoubleSummaryStatistics all = Stream.of(ends, lines, dots, next)
                .flatMapToDouble(values -> values)
                .summaryStatistics();
        return new Range(all.getMin(), all.getMax());
    }

    /** The name of a plot's quantity, in its upper left corner and in its line's colour and dash. */
    private void name(XYPlot plot, String text, Color colour) {
        XYTitleAnnotation title = new XYTitleAnnotation(
                0.005,
                0.98,
                new TextTitle(
                        text,
                        font,
                        colour,
                        RectangleEdge.TOP,
                        HorizontalAlignment.LEFT,
                        VerticalAlignment.TOP,
                        RectangleInsets.ZERO_INSETS),
                RectangleAnchor.TOP_LEFT);
        plot.addAnnotation(title);
    }

    /** How an expectation is read. */
    private static final class Expected {
        static Range level(StripData.Expected expected) {
            return expected.submergenceMm();
        }

        static Range amount(StripData.Expected expected) {
            return new Range(
                    Math.max(LEAST_ML, expected.skimmateMlPerDay().low()),
                    Math.max(LEAST_ML, expected.skimmateMlPerDay().high()));
        }
    }

    /** How a point of the history is read. */
    private static final class Reads {
        static double submergence(History.Point point) {
            return point.submergenceMm();
        }

        static double amount(History.Point point) {
            return Math.max(LEAST_ML, point.skimmateMlPerDay());
        }
    }

    private XYPlot plot(
            ValueAxis axis,
            Range band,
            ToDoubleFunction<History.Point> value,
            ToDoubleFunction<StripData.Seen> seenValue,
            Color colour,
            boolean dashed) {
        XYSeries line = new XYSeries("run", false, true);
        data.points().forEach(point -> line.add(day(point.at()), value.applyAsDouble(point)));
        XYSeries dots = new XYSeries("seen", false, true);
        data.seen().stream()
                .filter(seen -> Double.isFinite(seenValue.applyAsDouble(seen)))
                .forEach(seen -> dots.add(
                        day(seen.at()),
                        Math.max(axis instanceof LogAxis ? LEAST_ML : -1e9, seenValue.applyAsDouble(seen))));
        XYSeriesCollection series = new XYSeriesCollection();
        series.addSeries(line);
        series.addSeries(dots);
        XYPlot plot = new XYPlot(series, null, axis, renderer(colour, dashed));
        plot.setBackgroundPaint(palette.paper());
        plot.setDomainGridlinePaint(palette.rule());
        plot.setRangeGridlinePaint(palette.rule());
        plot.setOutlinePaint(palette.rule());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        IntervalMarker wanted = new IntervalMarker(band.low(), band.high(), Palette.fade(palette.good(), 50));
        wanted.setLabel(words.of("strip.wanted"));
        wanted.setLabelFont(font.deriveFont(font.getSize2D() * 0.92f));
        wanted.setLabelPaint(palette.ink());
        wanted.setLabelAnchor(RectangleAnchor.RIGHT);
        wanted.setLabelTextAnchor(TextAnchor.CENTER_RIGHT);
        wanted.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        wanted.setLabelOffset(new RectangleInsets(1, 4, 1, 4));
        plot.addRangeMarker(wanted, Layer.BACKGROUND);
        for (StripData.Mark mark : data.marks()) {
            ValueMarker moved = new ValueMarker(
                    day(mark.at()), palette.muted(), new BasicStroke(1, 0, 0, 1, new float[] {2, 3}, 0));
            plot.addDomainMarker(moved, Layer.BACKGROUND);
        }
        return plot;
    }

    private void label(XYPlot plot, StripData.Mark mark) {
        ValueMarker moved = new ValueMarker(day(mark.at()), new Color(0, 0, 0, 0), new BasicStroke(0.1f));
        moved.setLabel(mark.label());
        moved.setLabelFont(font.deriveFont(font.getSize2D() * 0.92f));
        moved.setLabelPaint(palette.ink());
        moved.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        moved.setLabelAnchor(RectangleAnchor.BOTTOM_LEFT);
        moved.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
        plot.addDomainMarker(moved, Layer.FOREGROUND);
    }

    private XYLineAndShapeRenderer renderer(Color colour, boolean dashed) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        renderer.setSeriesLinesVisible(0, true);
        renderer.setSeriesShapesVisible(0, false);
        renderer.setSeriesPaint(0, colour);
        renderer.setSeriesStroke(0, dashed ? new BasicStroke(2, 0, 1, 1, new float[] {7, 3}, 0) : new BasicStroke(2));
        renderer.setSeriesLinesVisible(1, false);
        renderer.setSeriesShapesVisible(1, true);
        renderer.setSeriesShape(1, new Ellipse2D.Double(-3.5, -3.5, 7, 7));
        renderer.setSeriesPaint(1, palette.ink());
        renderer.setSeriesFillPaint(1, palette.paper());
        renderer.setUseFillPaint(true);
        return renderer;
    }

    /** A bar with ends over the range in which the next reading should lie. */
    private void expected(XYPlot plot, Instant at, Range range) {
        double x = day(at);
        double low = plot.getRangeAxis() instanceof LogAxis ? Math.max(LEAST_ML, range.low()) : range.low();
        double high = Math.max(low, range.high());
        BasicStroke stroke = new BasicStroke(2.4f);
        plot.addAnnotation(new XYLineAnnotation(x, low, x, high, stroke, palette.ink()));
        plot.addAnnotation(new XYLineAnnotation(x - 0.05, low, x + 0.05, low, stroke, palette.ink()));
        plot.addAnnotation(new XYLineAnnotation(x - 0.05, high, x + 0.05, high, stroke, palette.ink()));
    }

    private void dress(ValueAxis axis) {
        axis.setLabelFont(font);
        axis.setLabelPaint(palette.ink());
        axis.setTickLabelFont(font.deriveFont(font.getSize2D() * 0.92f));
        axis.setTickLabelPaint(palette.muted());
        axis.setAxisLinePaint(palette.rule());
        axis.setTickMarkPaint(palette.rule());
    }

    /** Numbers on the log axis without exponents. */
    private static final class PlainNumbers extends NumberFormat {
        private static final long serialVersionUID = 1L;

        @Override
        public StringBuffer format(double number, StringBuffer text, FieldPosition position) {
            return text.append(Math.round(number));
        }

        @Override
        public StringBuffer format(long number, StringBuffer text, FieldPosition position) {
            return text.append(number);
        }

        @Override
        public Number parse(String source, ParsePosition position) {
            return null;
        }
    }
}
