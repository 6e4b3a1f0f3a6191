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
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;

/** Draws skimmate against the weir's height, with a row of the computed colours below the line and today's point on it. */
final class ResponseChart {
    private static final double COLOUR_ROW_SHARE = 0.1;
    private static final double LAG_SHOWN = 0.06;

    private final ResponseData data;
    private final Dress dress;
    private final Palette palette;
    private final Font font;
    private final Shown mm;
    private final Shown perDay;

    ResponseChart(ResponseData data, Dress dress, Font font) {
        this.data = data;
        this.dress = dress;
        palette = dress.palette();
        this.font = font;
        mm = new Shown(Unit.MILLIMETRE, dress.words().book().units());
        perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        NumberAxis crest = new NumberAxis(dress.text("response.crest", mm.symbol()));
        crest.setRange(
                mm.of(data.points().get(0).crestMm()),
                mm.of(data.points().get(data.points().size() - 1).crestMm()));
        ChartStyle style = new ChartStyle(palette, font);
        style.dress(crest);
        Range shown = perDay.of(data.axisMlPerDay());
        double low = shown.low();
        ResponseData.Point today = data.today();
        double now = data.nowMlPerDay();
        boolean lags = Math.abs(Math.log((now + 1) / (today.skimmateMlPerDay() + 1))) > LAG_SHOWN;
        boolean turned = !data.before().equals(data.points());
        double at = mm.of(today.crestMm());
        Ellipse2D dot = new Ellipse2D.Double(-6, -6, 12, 12);
        Pane pane = Pane.amounts(dress, font, dress.text("response.amount", perDay.symbol()))
                .range(low, shown.high())
                .band(perDay.of(data.bandMlPerDay()))
                .upright(at, palette.second(), Pane.THIN, Layer.BACKGROUND)
                .line(curve(turned ? data.before() : List.of()), palette.muted(), Pane.DASHED)
                .line(curve(data.points()), palette.accent(), Pane.SOLID)
                .dots(curve(List.of(today)), dot, palette.second(), palette.second());
        if (lags) {
            pane.dots(Stream.of(new double[] {at, Pane.amount(dress, now)}), dot, palette.ink(), palette.paper());
        }
        pane.with(new ColourRow(low, low * Math.pow(shown.high() / low, COLOUR_ROW_SHARE)));
        style.draw(pane.over(crest), graphics, area);
    }

    private Stream<double[]> curve(List<ResponseData.Point> points) {
        return points.stream().map(point ->
                new double[] {mm.of(point.crestMm()), Pane.amount(dress, point.skimmateMlPerDay())});
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
