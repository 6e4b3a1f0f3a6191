package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.SkimmateColour;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws skimmate against the weir's height, with a row of the computed colours below the line and today's point on it. */
final class ResponseChart {
    private static final double LEAST_ML = 1;
    private static final double COLOUR_ROW_SHARE = 0.1;
    private static final double LAG_SHOWN = 0.06;

    private final ResponseData data;
    private final Dress dress;
    private final Palette palette;
    private final ChartStyle style;
    private final Shown mm;
    private final Shown perDay;

    ResponseChart(ResponseData data, Dress dress, Font font) {
        this.data = data;
        this.dress = dress;
        palette = dress.palette();
        style = new ChartStyle(palette, font);
        mm = new Shown(Unit.MILLIMETRE, dress.words().book().units());
        perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        NumberAxis crest = new NumberAxis(dress.text("response.crest", mm.symbol()));
        crest.setRange(
                mm.of(data.points().get(0).crestMm()),
                mm.of(data.points().get(data.points().size() - 1).crestMm()));
        style.dress(crest);
        LogAxis amount = style.logAxis();
        Range shown = perDay.of(data.axisMlPerDay());
        double low = shown.low();
        double high = shown.high();
        amount.setRange(low, high);
        XYPlot plot = new XYPlot(series(), crest, amount, renderer());
        style.dress(plot);
        style.name(plot, dress.text("response.amount", perDay.symbol()));
        IntervalMarker wanted = style.band(perDay.of(data.bandMlPerDay()), dress.text("strip.wanted"));
        plot.addRangeMarker(wanted, Layer.BACKGROUND);
        ValueMarker today = new ValueMarker(mm.of(data.today().crestMm()), palette.second(), new BasicStroke(1.6f));
        plot.addDomainMarker(today, Layer.BACKGROUND);
        plot.addAnnotation(new ColourRow(low, low * Math.pow(high / low, COLOUR_ROW_SHARE)));
        style.draw(plot, graphics, area);
    }

    private XYSeriesCollection series() {
        XYSeriesCollection all = new XYSeriesCollection();
        all.addSeries(line("line", data.points()));
        all.addSeries(line("settled", List.of(data.today())));
        ResponseData.Point today = data.today();
        boolean lags = Math.abs(Math.log((data.nowMlPerDay() + 1) / (today.skimmateMlPerDay() + 1))) > LAG_SHOWN;
        all.addSeries(line(
                "now",
                lags
                        ? List.of(new ResponseData.Point(
                                today.crestMm(), today.submergenceMm(), data.nowMlPerDay(), today.darknessPtCo()))
                        : List.of()));
        all.addSeries(line("before", data.before().equals(data.points()) ? List.of() : data.before()));
        return all;
    }

    private XYSeries line(String name, List<ResponseData.Point> points) {
        XYSeries line = new XYSeries(name, false, false);
        points.forEach(
                point -> line.add(mm.of(point.crestMm()), perDay.of(Math.max(LEAST_ML, point.skimmateMlPerDay()))));
        return line;
    }

    private XYLineAndShapeRenderer renderer() {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        Ellipse2D dot = new Ellipse2D.Double(-6, -6, 12, 12);
        renderer.setSeriesShapesVisible(0, false);
        renderer.setSeriesPaint(0, palette.accent());
        renderer.setSeriesStroke(0, new BasicStroke(2.2f));
        renderer.setSeriesShape(1, dot);
        renderer.setSeriesPaint(1, palette.second());
        renderer.setSeriesFillPaint(1, palette.second());
        renderer.setSeriesShape(2, dot);
        renderer.setSeriesPaint(2, palette.ink());
        renderer.setSeriesFillPaint(2, palette.paper());
        renderer.setUseFillPaint(true);
        renderer.setSeriesShapesVisible(3, false);
        renderer.setSeriesPaint(3, palette.muted());
        renderer.setSeriesStroke(
                3, new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0));
        return renderer;
    }

    /** The colour of the skimmate at each crest, as it looks in the vial. */
    private final class ColourRow extends org.jfree.chart.annotations.AbstractXYAnnotation {
        private static final long serialVersionUID = 1L;
        private final double foot;
        private final double top;

        ColourRow(double foot, double top) {
            this.foot = foot;
            this.top = top;
        }

        @Override
        public void draw(
                Graphics2D graphics,
                XYPlot plot,
                Rectangle2D area,
                org.jfree.chart.axis.ValueAxis domain,
                org.jfree.chart.axis.ValueAxis range,
                int index,
                org.jfree.chart.plot.PlotRenderingInfo info) {
            double y = range.valueToJava2D(top, area, plot.getRangeAxisEdge());
            double bottom = range.valueToJava2D(foot, area, plot.getRangeAxisEdge());
            for (int i = 0; i + 1 < data.points().size(); i++) {
                ResponseData.Point point = data.points().get(i);
                double left = domain.valueToJava2D(mm.of(point.crestMm()), area, plot.getDomainAxisEdge());
                double right =
                        domain.valueToJava2D(mm.of(data.points().get(i + 1).crestMm()), area, plot.getDomainAxisEdge());
                graphics.setColor(colour(point));
                graphics.fill(new Rectangle2D.Double(left, y, right - left + 0.5, bottom - y));
            }
            graphics.setColor(palette.muted());
            graphics.setStroke(new BasicStroke(1));
            graphics.draw(new Rectangle2D.Double(area.getX(), y, area.getWidth(), bottom - y));
        }

        private Color colour(ResponseData.Point point) {
            return SkimmateColour.of(point.darknessPtCo());
        }
    }
}
