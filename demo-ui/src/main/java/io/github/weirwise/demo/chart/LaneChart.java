package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.PredictionResult;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;

/** Draws the three lanes of a debrief under each other. */
final class LaneChart {
    /** Names of acts go up and down by turns, so that two of one morning can both be read. */
    private static final double[] ROWS = {0.66, 0.46, 0.26};

    private final LaneDrawing data;
    private final Lane own;
    private final Lane sound;
    private final Lane nothing;
    private final Dress dress;
    private final Font font;
    private final Palette palette;
    private final Shown perDay;
    private final Shown mm;
    private final double days;

    LaneChart(LaneDrawing data, Dress dress, Font font) {
        this.data = data;
        own = data.debrief().lanes().get(0);
        sound = data.debrief().lanes().get(1);
        nothing = data.debrief().lanes().get(2);
        this.dress = dress;
        this.font = font;
        palette = dress.palette();
        perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
        mm = new Shown(Unit.MILLIMETRE, dress.words().book().units());
        days = points().mapToDouble(point -> data.days(point.hours())).max().orElse(1);
    }

    void draw(Graphics2D graphics, Rectangle2D area) {
        NumberAxis time = new NumberAxis(dress.text("lanes.days"));
        time.setRange(0, Math.max(1, days));
        time.setTickUnit(new NumberTickUnit(Math.max(1, Math.ceil(days / 10))));
        time.setNumberFormatOverride(new DecimalFormat("0"));
        ChartStyle style = new ChartStyle(palette, font);
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
        DoubleSummaryStatistics crests =
                own.track().stream().mapToDouble(TrackPoint::weirCrestMm).summaryStatistics();
        double high = crests.getMax() + 4 + 1.6 * (crests.getMax() - crests.getMin());
        Pane pane = Pane.lengths(dress, font, dress.text("lanes.done", mm.symbol()))
                .range(mm.of(crests.getMin() - 2), mm.of(high))
                .line(course(own, point -> mm.of(point.weirCrestMm())), palette.accent(), Pane.SOLID);
        return acts(pane, own.marks());
    }

    /** What came, and over it what was said. */
    private XYPlot came() {
        Pane pane = amounts("lanes.came").line(course(own, this::amount), palette.accent(), Pane.SOLID);
        for (PredictionResult each : data.debrief().predictions()) {
            double y = Pane.amount(dress, each.saidMlPerDay());
            double from = data.days(each.atHours());
            pane.straight(from, y, from + 1, y, palette.ink(), Pane.DASHED);
        }
        return acts(pane, List.of());
    }

    /** What sound tuning would have done, and what comes of doing nothing. */
    private XYPlot sound() {
        Pane pane = amounts("lanes.sound")
                .line(course(sound, this::amount), palette.second(), Pane.SOLID)
                .line(course(nothing, this::amount), palette.muted(), Pane.THIN);
        return acts(pane, sound.marks());
    }

    private Stream<TrackPoint> points() {
        return Stream.of(own, sound, nothing).flatMap(lane -> lane.track().stream());
    }

    private double amount(TrackPoint point) {
        return Pane.amount(dress, point.skimmateMlPerDay());
    }

    private Stream<double[]> course(Lane lane, ToDoubleFunction<TrackPoint> value) {
        return lane.track().stream().map(point -> new double[] {data.days(point.hours()), value.applyAsDouble(point)});
    }

    private Pane amounts(String key) {
        Range band =
                perDay.of(data.debrief().session().scenario().unit().target().skimmateBandMlPerDay());
        DoubleSummaryStatistics all = points().mapToDouble(this::amount).summaryStatistics();
        return Pane.amounts(dress, font, dress.text(key, perDay.symbol()))
                .range(0.7 * Math.min(all.getMin(), band.low()), 8 * Math.max(all.getMax(), band.high()))
                .band(band);
    }

    /** Names what was done, and marks where the replay stands. */
    private XYPlot acts(Pane pane, List<Lane.Mark> marks) {
        int number = 0;
        for (Lane.Mark act : marks.stream().filter(Lane.Mark::act).toList()) {
            double at = data.days(act.atHours());
            pane.upright(at, palette.rule(), Pane.THIN, Layer.BACKGROUND)
                    .words(dress.words().say(act.what()), at, ROWS[number++ % ROWS.length], at > 0.6 * days);
        }
        return pane.upright(data.days(data.atHours()), palette.ink(), Pane.THIN, Layer.FOREGROUND)
                .plot();
    }
}
