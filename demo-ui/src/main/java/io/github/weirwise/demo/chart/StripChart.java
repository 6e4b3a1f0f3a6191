package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
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
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;

/** Draws the strip of days: level over amount on one time axis, with wanted bands, things done, and what is expected. */
final class StripChart {
    private static final double LEAST_DAYS = 2;
    private static final double MOST_DAYS = 10;
    /** The name of a plot stands over its highest value, not across it. */
    private static final double NAME_SHARE = 0.4;

    private final StripData data;
    private final Dress dress;
    private final Palette palette;
    private final Font font;
    private final ChartStyle style;
    private final double firstDay;
    private final double lastDay;

    StripChart(StripData data, Dress dress, Font font) {
        this.data = data;
        this.dress = dress;
        this.font = font;
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
    private record Curve(List<double[]> run, List<double[]> seen, Range band, Optional<Range> expected) {
        /** The range that holds all of it. */
        Range spread() {
            DoubleSummaryStatistics all = Stream.of(
                            Stream.of(band).flatMap(Curve::ends),
                            expected.stream().flatMap(Curve::ends),
                            Stream.concat(run.stream(), seen.stream()).map(point -> point[1]))
                    .flatMap(values -> values)
                    .mapToDouble(each -> each)
                    .summaryStatistics();
            return new Range(all.getMin(), all.getMax());
        }

        private static Stream<Double> ends(Range range) {
            return Stream.of(range.low(), range.high());
        }
    }

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
                run(point -> mm.of(point.submergenceMm())),
                seen(StripData.Seen::submergenceMm, mm::of),
                mm.of(data.bandMm()),
                data.expected().map(e -> mm.of(e.submergenceMm())));
        Range around = curve.spread();
        double slack = Math.max(mm.of(4.0), 0.15 * around.width());
        return plot(Pane.lengths(dress, font, dress.text("strip.level", mm.symbol())), curve)
                .range(around.low() - slack, around.high() + NAME_SHARE * (around.width() + 2 * slack))
                .line(curve.run().stream(), palette.accent(), Pane.SOLID)
                .plot();
    }

    private XYPlot amountPlot() {
        Shown perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
        Curve curve = new Curve(
                run(point -> amount(point.skimmateMlPerDay())),
                seen(StripData.Seen::skimmateMlPerDay, this::amount),
                perDay.of(data.bandMlPerDay()),
                data.expected()
                        .map(StripData.Expected::skimmateMlPerDay)
                        .map(range -> new Range(amount(range.low()), amount(range.high()))));
        Range around = curve.spread();
        double least = Math.max(amount(0), around.low() * 0.7);
        Pane pane = plot(Pane.amounts(dress, font, dress.text("strip.amount", perDay.symbol())), curve)
                .range(least, around.high() * Math.pow(2 * around.high() / least, NAME_SHARE))
                .line(curve.run().stream(), palette.second(), Pane.DASHED);
        data.marks().stream()
                .filter(mark -> day(mark.at()) >= firstDay)
                .forEach(mark -> pane.words(
                        mark.label(), day(mark.at()), 0.07, day(mark.at()) > firstDay + 0.8 * (lastDay - firstDay)));
        return pane.plot();
    }

    private double amount(double mlPerDay) {
        return Pane.amount(dress, mlPerDay);
    }

    private List<double[]> run(ToDoubleFunction<History.Point> shown) {
        return data.points().stream()
                .filter(point -> day(point.at()) >= firstDay)
                .map(point -> new double[] {day(point.at()), shown.applyAsDouble(point)})
                .toList();
    }

    private List<double[]> seen(ToDoubleFunction<StripData.Seen> value, DoubleUnaryOperator shown) {
        return data.seen().stream()
                .filter(seen -> day(seen.at()) >= firstDay && Double.isFinite(value.applyAsDouble(seen)))
                .map(seen -> new double[] {day(seen.at()), shown.applyAsDouble(value.applyAsDouble(seen))})
                .toList();
    }

    /** What both plots have: band, what was done, what was read, what is expected. */
    private Pane plot(Pane pane, Curve curve) {
        pane.band(curve.band());
        data.marks().forEach(mark -> pane.upright(day(mark.at()), palette.muted(), Pane.DOTTED, Layer.BACKGROUND));
        pane.dots(curve.seen().stream(), new Ellipse2D.Double(-3.5, -3.5, 7, 7), palette.ink(), palette.paper());
        data.expected()
                .ifPresent(each ->
                        pane.whisker(day(each.at()), curve.expected().orElseThrow(), 0.006 * (lastDay - firstDay)));
        return pane;
    }
}
