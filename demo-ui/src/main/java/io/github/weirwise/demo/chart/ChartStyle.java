package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.report.Range;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTitleAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.ui.VerticalAlignment;

/** Dresses charts in the palette's colours, without frames and shadows that tell nothing. */
final class ChartStyle {
    private final Palette palette;
    private final Font font;

    ChartStyle(Palette palette, Font font) {
        this.palette = palette;
        this.font = font;
    }

    Font small() {
        return font.deriveFont(font.getSize2D() * 0.92f);
    }

    void dress(ValueAxis axis) {
        axis.setLabelFont(font);
        axis.setLabelPaint(palette.ink());
        axis.setTickLabelFont(small());
        axis.setTickLabelPaint(palette.muted());
        axis.setAxisLinePaint(palette.rule());
        axis.setTickMarkPaint(palette.rule());
    }

    void dress(XYPlot plot) {
        plot.setBackgroundPaint(palette.paper());
        plot.setDomainGridlinePaint(palette.rule());
        plot.setRangeGridlinePaint(palette.rule());
        plot.setOutlinePaint(palette.rule());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    /** A logarithmic axis for amounts with plain numbers. */
    LogAxis logAxis() {
        LogAxis axis = new AmountAxis();
        axis.setSmallestValue(0.001);
        dress(axis);
        return axis;
    }

    /** The band of what is wanted, with its name at the right end. */
    IntervalMarker band(Range band, String name) {
        IntervalMarker wanted = new IntervalMarker(band.low(), band.high(), Palette.fade(palette.good(), 50));
        wanted.setLabel(name);
        wanted.setLabelFont(small());
        wanted.setLabelPaint(palette.ink());
        wanted.setLabelAnchor(RectangleAnchor.BOTTOM_RIGHT);
        wanted.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
        wanted.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        wanted.setLabelOffset(new RectangleInsets(1, 4, 1, 4));
        return wanted;
    }

    /** The name of a plot's quantity in its upper left corner. */
    void name(XYPlot plot, String text) {
        TextTitle title = new TextTitle(
                text,
                font,
                palette.ink(),
                RectangleEdge.TOP,
                HorizontalAlignment.LEFT,
                VerticalAlignment.TOP,
                RectangleInsets.ZERO_INSETS);
        plot.addAnnotation(new XYTitleAnnotation(0.005, 0.98, title, RectangleAnchor.TOP_LEFT));
    }

    void draw(Plot plot, Graphics2D graphics, Rectangle2D area) {
        JFreeChart chart = new JFreeChart(null, font, plot, false);
        chart.setBackgroundPaint(palette.paper());
        chart.setPadding(new RectangleInsets(2, 2, 0, 20));
        chart.setAntiAlias(true);
        chart.draw(graphics, area);
    }

    /** A logarithmic axis with plain numbers at 1, 2, 5, 10 ..., or at the tens alone where these would stand too close. */
    private static final class AmountAxis extends LogAxis {
        private static final long serialVersionUID = 1L;
        private static final double LEAST_PX_A_DECADE = 75;

        @Override
        protected List<NumberTick> refreshTicksVertical(Graphics2D graphics, Rectangle2D area, RectangleEdge edge) {
            double decades = Math.log10(getUpperBound() / getLowerBound());
            double[] parts = area.getHeight() / decades < LEAST_PX_A_DECADE ? new double[] {1} : new double[] {1, 2, 5};
            List<NumberTick> ticks = new ArrayList<>();
            for (int power = (int) Math.floor(Math.log10(getLowerBound()));
                    power <= Math.log10(getUpperBound());
                    power++) {
                for (double part : parts) {
                    double value = part * Math.pow(10, power);
                    if (getRange().contains(value)) {
                        ticks.add(new NumberTick(
                                value, plain(value), TextAnchor.CENTER_RIGHT, TextAnchor.CENTER_RIGHT, 0));
                    }
                }
            }
            return ticks;
        }

        private static String plain(double value) {
            return value < 1 ? String.valueOf(Math.round(100 * value) / 100.0) : String.valueOf(Math.round(value));
        }
    }
}
