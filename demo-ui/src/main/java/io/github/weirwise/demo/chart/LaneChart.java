package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws courses under different hands: each with its own colour, dash and name at its end. */
final class LaneChart {
    private static final double LEAST_ML = 1;
    private static final float[][] DASHES = {null, {7, 3}, {2, 3}};
    private static final double ROOM_FOR_NAMES = 0.4;
    private static final double UNDER_THE_LINE = 3;

    private final LaneData data;
    private final Dress dress;
    private final ChartStyle style;
    private final Shown perDay;

    LaneChart(LaneData data, Dress dress, Font font) {
        this.data = data;
        this.dress = dress;
        style = new ChartStyle(dress.palette(), font);
        perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        double days = data.lanes().stream()
                .flatMap(lane -> lane.points().stream())
                .mapToDouble(LaneData.Point::days)
                .max()
                .orElse(1);
        NumberAxis time = new NumberAxis(dress.text("lanes.days"));
        time.setRange(0, Math.max(1, days) * (1 + ROOM_FOR_NAMES));
        time.setTickUnit(new NumberTickUnit(Math.max(1, Math.ceil(days / 8))));
        time.setNumberFormatOverride(new DecimalFormat("0"));
        style.dress(time);
        LogAxis amount = style.logAxis();
        double least = perDay.of(LEAST_ML);
        double high = data.lanes().stream()
                .flatMap(lane -> lane.points().stream())
                .mapToDouble(point -> perDay.of(point.skimmateMlPerDay()))
                .max()
                .orElse(100);
        double top = Math.max(high, perDay.of(data.bandMlPerDay().high()));
        amount.setRange(least, 2.2 * top);
        XYPlot plot = new XYPlot(series(), time, amount, renderer());
        style.dress(plot);
        style.name(plot, dress.text("strip.amount", perDay.symbol()));
        plot.addRangeMarker(
                style.band(perDay.of(data.bandMlPerDay()), dress.text("strip.wanted"), false), Layer.BACKGROUND);
        names(plot, days);
        style.draw(plot, graphics, area);
    }

    private XYSeriesCollection series() {
        XYSeriesCollection all = new XYSeriesCollection();
        for (LaneData.Lane lane : data.lanes()) {
            XYSeries line = new XYSeries(all.getSeriesCount(), false, true);
            lane.points()
                    .forEach(point -> line.add(point.days(), perDay.of(Math.max(LEAST_ML, point.skimmateMlPerDay()))));
            all.addSeries(line);
        }
        return all;
    }

    private Color colour(int lane) {
        Palette palette = dress.palette();
        return lane == 0 ? palette.accent() : lane == 1 ? palette.second() : palette.ink();
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int lane = 0; lane < data.lanes().size(); lane++) {
            float[] dash = DASHES[Math.min(lane, DASHES.length - 1)];
            renderer.setSeriesPaint(lane, colour(lane));
            renderer.setSeriesStroke(
                    lane,
                    dash == null
                            ? new BasicStroke(2.4f)
                            : new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
        }
        return renderer;
    }

    /**
     * Each name stands behind its line's end; that of a line which ends early stands under it, because the others go on
     * there.
     */
    private void names(XYPlot plot, double longestDays) {
        double before = Double.NaN;
        for (int lane = 0; lane < data.lanes().size(); lane++) {
            LaneData.Lane each = data.lanes().get(lane);
            if (each.points().isEmpty()) {
                continue;
            }
            LaneData.Point last = each.points().get(each.points().size() - 1);
            double y = perDay.of(Math.max(LEAST_ML, last.skimmateMlPerDay()));
            boolean endsEarly = last.days() < 0.95 * longestDays;
            if (endsEarly) {
                y /= UNDER_THE_LINE;
            } else if (Math.abs(Math.log(y / before)) < 0.5) {
                y = before * (y < before ? 0.5 : 2);
            }
            before = endsEarly ? before : y;
            XYTextAnnotation name = new XYTextAnnotation(
                    dress.words().say(each.who()), endsEarly ? last.days() / 2 : last.days() * 1.01, y);
            name.setTextAnchor(endsEarly ? TextAnchor.CENTER : TextAnchor.CENTER_LEFT);
            name.setFont(style.small());
            name.setPaint(dress.palette().ink());
            plot.addAnnotation(name);
        }
    }
}
