package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.util.stream.Stream;
import org.jfree.chart.annotations.XYAnnotation;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * One plot of a chart, put together piece by piece: what it shows in its upper left corner, the band of what is wanted, lines,
 * dots, marks. Values are those that are shown on the axes.
 */
final class Pane {
    /** Solid, for what is. */
    static final BasicStroke SOLID = new BasicStroke(2.2f);
    /** Dashed, for what was or was said. */
    static final BasicStroke DASHED = dashes(2, 6, 4);
    /** For things beside the main one. */
    static final BasicStroke THIN = new BasicStroke(1.2f);
    /** For the moments at which something was done. */
    static final BasicStroke DOTTED = dashes(1, 2, 3);

    private static final double LEAST_ML = 1;
    private static final BasicStroke WHISKER = new BasicStroke(2.4f);

    private final Palette palette;
    private final Dress dress;
    private final ChartStyle style;
    private final XYSeriesCollection all = new XYSeriesCollection();
    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
    private final XYPlot plot;

    private Pane(Dress dress, Font font, String name, ValueAxis axis) {
        this.dress = dress;
        palette = dress.palette();
        style = new ChartStyle(palette, font);
        renderer.setUseFillPaint(true);
        renderer.setDrawSeriesLineAsPath(true);
        plot = new XYPlot(all, null, axis, renderer);
        style.dress(axis);
        style.dress(plot);
        style.name(plot, name);
    }

    /** A plot of amounts, on a logarithmic axis. */
    static Pane amounts(Dress dress, Font font, String name) {
        return new Pane(dress, font, name, new ChartStyle(dress.palette(), font).logAxis());
    }

    /** A plot of lengths. */
    static Pane lengths(Dress dress, Font font, String name) {
        return new Pane(dress, font, name, new NumberAxis());
    }

    /** An amount as the axis of such a plot shows it: nothing less than a millilitre. */
    static double amount(Dress dress, double mlPerDay) {
        return new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units()).of(Math.max(LEAST_ML, mlPerDay));
    }

    private static BasicStroke dashes(float width, float on, float off) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {on, off}, 0);
    }

    Pane range(double low, double high) {
        plot.getRangeAxis().setRange(low, high);
        return this;
    }

    /** The band of what is wanted. */
    Pane band(Range wanted) {
        plot.addRangeMarker(style.band(wanted, dress.text("strip.wanted")), Layer.BACKGROUND);
        return this;
    }

    /** A line through points, each across and up. */
    Pane line(Stream<double[]> points, Color colour, BasicStroke stroke) {
        int number = add(points, colour);
        renderer.setSeriesShapesVisible(number, false);
        renderer.setSeriesStroke(number, stroke);
        return this;
    }

    /** Dots at points. */
    Pane dots(Stream<double[]> points, Shape shape, Color edge, Color fill) {
        int number = add(points, edge);
        renderer.setSeriesLinesVisible(number, false);
        renderer.setSeriesShape(number, shape);
        renderer.setSeriesFillPaint(number, fill);
        return this;
    }

    private int add(Stream<double[]> points, Color colour) {
        int number = all.getSeriesCount();
        XYSeries series = new XYSeries(number, false, true);
        points.forEach(point -> series.add(point[0], point[1]));
        all.addSeries(series);
        renderer.setSeriesPaint(number, colour);
        return number;
    }

    /** An upright line over the whole height, behind everything or before it. */
    Pane upright(double x, Color colour, BasicStroke stroke, Layer layer) {
        plot.addDomainMarker(new ValueMarker(x, colour, stroke), layer);
        return this;
    }

    /** A straight line between two points. */
    Pane straight(double x1, double y1, double x2, double y2, Color colour, BasicStroke stroke) {
        return with(new XYLineAnnotation(x1, y1, x2, y2, stroke, colour));
    }

    /** A bar with ends over a range in which something is expected. */
    Pane whisker(double x, Range range, double half) {
        straight(x, range.low(), x, range.high(), palette.ink(), WHISKER);
        straight(x - half, range.low(), x + half, range.low(), palette.ink(), WHISKER);
        return straight(x - half, range.high(), x + half, range.high(), palette.ink(), WHISKER);
    }

    /** A few words at a place, up by a share of the height; they go to the left where to the right they would be cut. */
    Pane words(String text, double x, double share, boolean left) {
        ValueAxis axis = plot.getRangeAxis();
        double low = axis.getLowerBound();
        double high = axis.getUpperBound();
        double y = axis instanceof LogAxis ? low * Math.pow(high / low, share) : low + share * (high - low);
        XYTextAnnotation label = new XYTextAnnotation(text, x, y);
        label.setTextAnchor(left ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT);
        label.setFont(style.small());
        label.setPaint(palette.ink());
        return with(label);
    }

    Pane with(XYAnnotation annotation) {
        plot.addAnnotation(annotation);
        return this;
    }

    XYPlot plot() {
        return plot;
    }

    /** The same with an axis across of its own. */
    XYPlot over(ValueAxis across) {
        plot.setDomainAxis(across);
        return plot;
    }
}
