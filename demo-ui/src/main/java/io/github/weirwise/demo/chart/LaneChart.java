package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws the three lanes of a debrief under each other. */
final class LaneChart {
    private static final double LEAST_ML = 1;
    /** Names of acts go up and down by turns, so that two of one morning can both be read. */
    private static final double[] ROWS = {0.66, 0.46, 0.26};

    private static final BasicStroke SOLID = new BasicStroke(2.4f);
    private static final BasicStroke DASHED =
            new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {6, 4}, 0);
    private static final BasicStroke THIN = new BasicStroke(1.2f);

    private final LaneDrawing data;
    private final Lane own;
    private final Lane sound;
    private final Lane nothing;
    private final Range bandMlPerDay;
    private final Dress dress;
    private final Palette palette;
    private final ChartStyle style;
    private final Shown perDay;
    private final Shown mm;
    private final double days;

    LaneChart(LaneDrawing data, Dress dress, Font font) {
        this.data = data;
        own = data.debrief().lanes().get(0);
        sound = data.debrief().lanes().get(1);
        nothing = data.debrief().lanes().get(2);
        this.dress = dress;
        palette = dress.palette();
        style = new ChartStyle(palette, font);
        perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
        mm = new Shown(Unit.MILLIMETRE, dress.words().book().units());
        bandMlPerDay =
                perDay.of(data.debrief().session().scenario().unit().target().skimmateBandMlPerDay());
        days = points().mapToDouble(point -> data.days(point.hours())).max().orElse(1);
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        NumberAxis time = new NumberAxis(dress.text("lanes.days"));
        time.setRange(0, Math.max(1, days));
        time.setTickUnit(new NumberTickUnit(Math.max(1, Math.ceil(days / 10))));
        time.setNumberFormatOverride(new DecimalFormat("0"));
        style.dress(time);
        CombinedDomainXYPlot lanes = new CombinedDomainXYPlot(time);
        lanes.setGap(6);
        lanes.add(done(), 3);
        lanes.add(came(), 4);
        lanes.add(sound(), 4);
        style.draw(lanes, graphics, area);
    }

    /** What the trainee did: the crest by its mark, and every act by name. */
    private XYPlot done() {
        XYPlot plot =
                new XYPlot(new XYSeriesCollection(), null, new NumberAxis(), new XYLineAndShapeRenderer(true, false));
        line(plot, own.track(), point -> mm.of(point.weirCrestMm()), palette.accent(), SOLID);
        double low = crests().min().orElse(0);
        double high = crests().max().orElse(1);
        plot.getRangeAxis().setRange(mm.of(low) - mm.of(2.0), mm.of(high) + mm.of(4 + 1.6 * (high - low)));
        finish(plot, dress.text("lanes.done", mm.symbol()), own.marks());
        return plot;
    }

    private DoubleStream crests() {
        return own.track().stream().mapToDouble(TrackPoint::weirCrestMm);
    }

    /** What came, and over it what was said. */
    private XYPlot came() {
        XYPlot plot = amounts();
        line(plot, own.track(), this::amount, palette.accent(), SOLID);
        for (PredictionResult each : data.debrief().predictions()) {
            double y = perDay.of(Math.max(LEAST_ML, each.saidMlPerDay()));
            double from = data.days(each.atHours());
            plot.addAnnotation(new XYLineAnnotation(from, y, from + 1, y, DASHED, palette.ink()));
        }
        finish(plot, dress.text("lanes.came", perDay.symbol()), List.of());
        return plot;
    }

    /** What sound tuning would have done, and what comes of doing nothing. */
    private XYPlot sound() {
        XYPlot plot = amounts();
        line(plot, sound.track(), this::amount, palette.second(), SOLID);
        line(plot, nothing.track(), this::amount, palette.muted(), THIN);
        finish(plot, dress.text("lanes.sound", perDay.symbol()), sound.marks());
        return plot;
    }

    private Stream<TrackPoint> points() {
        return Stream.of(own, sound, nothing).flatMap(lane -> lane.track().stream());
    }

    private double amount(TrackPoint point) {
        return perDay.of(Math.max(LEAST_ML, point.skimmateMlPerDay()));
    }

    private XYPlot amounts() {
        LogAxis axis = style.logAxis();
        double top = points().mapToDouble(this::amount).max().orElse(100);
        double low = points().mapToDouble(this::amount).min().orElse(1);
        axis.setRange(0.7 * Math.min(low, bandMlPerDay.low()), 8 * Math.max(top, bandMlPerDay.high()));
        XYPlot plot = new XYPlot(new XYSeriesCollection(), null, axis, new XYLineAndShapeRenderer(true, false));
        plot.addRangeMarker(style.band(bandMlPerDay, dress.text("strip.wanted")), Layer.BACKGROUND);
        return plot;
    }

    private void line(
            XYPlot plot,
            List<TrackPoint> points,
            ToDoubleFunction<TrackPoint> value,
            Color colour,
            BasicStroke stroke) {
        XYSeriesCollection all = (XYSeriesCollection) plot.getDataset();
        int number = all.getSeriesCount();
        XYSeries series = new XYSeries(number, false, true);
        points.forEach(point -> series.add(data.days(point.hours()), value.applyAsDouble(point)));
        all.addSeries(series);
        plot.getRenderer().setSeriesPaint(number, colour);
        plot.getRenderer().setSeriesStroke(number, stroke);
    }

    private void finish(XYPlot plot, String name, List<Lane.Mark> marks) {
        style.dress(plot);
        style.dress(plot.getRangeAxis());
        style.name(plot, name);
        int number = 0;
        for (Lane.Mark act : marks.stream().filter(Lane.Mark::act).toList()) {
            double at = data.days(act.atHours());
            plot.addDomainMarker(new ValueMarker(at, palette.rule(), THIN), Layer.BACKGROUND);
            XYTextAnnotation label = new XYTextAnnotation(
                    dress.words().say(act.what()), at, height(plot.getRangeAxis(), ROWS[number++ % ROWS.length]));
            boolean late = at > 0.6 * days;
            label.setTextAnchor(late ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT);
            label.setFont(style.small());
            label.setPaint(palette.ink());
            plot.addAnnotation(label);
        }
        plot.addDomainMarker(new ValueMarker(data.days(data.atHours()), palette.ink(), THIN), Layer.FOREGROUND);
    }

    private static double height(ValueAxis axis, double share) {
        double low = axis.getLowerBound();
        double high = axis.getUpperBound();
        return axis instanceof LogAxis ? low * Math.pow(high / low, share) : low + share * (high - low);
    }
}
