package io.github.weirwise.demo.chart;

import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.score.Scored;
import io.github.weirwise.unit.Target;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.util.ShapeUtils;

/**
 * Forecasts and what came, cup by cup: the range that was forecast as a bar, the reading as a dot where it held and as a cross
 * where it did not.
 *
 * @param cups forecasts of amounts against what came, oldest first
 * @param target what is wanted
 * @param clock tells its times
 */
public record ScoreDrawing(List<Scored> cups, Target target, Clock clock) implements Drawing {
    private static final BasicStroke BAR = new BasicStroke(6, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    /** Copies the list. */
    public ScoreDrawing {
        cups = List.copyOf(cups);
    }

    private static boolean holds(Scored cup) {
        return cup.forecast().holds(cup.came());
    }

    /** How many came as forecast. */
    public long held() {
        return cups.stream().filter(ScoreDrawing::holds).count();
    }

    /** By what factor the middle of a forecast was off, on the usual cup. */
    public double offBy(ToDoubleFunction<Scored> middle) {
        double[] off = cups.stream()
                .mapToDouble(cup -> Math.abs(cup.came() - middle.applyAsDouble(cup)))
                .sorted()
                .toArray();
        return off.length == 0 ? Double.NaN : Math.exp((off[off.length / 2] + off[(off.length - 1) / 2]) / 2);
    }

    private double mlPerDay(double log) {
        return target.skimmateMlPerDay() * Math.exp(log);
    }

    private Range forecast(Scored cup) {
        return new Range(mlPerDay(cup.forecast().low()), mlPerDay(cup.forecast().high()));
    }

    @Override
    public void draw(Graphics2D graphics, Rectangle2D area, Dress dress, Font font) {
        Palette palette = dress.palette();
        Shown perDay = new Shown(Unit.MILLILITRE_PER_DAY, dress.words().book().units());
        Range band = perDay.of(target.skimmateBandMlPerDay());
        DoubleSummaryStatistics all = cups.stream()
                .flatMap(cup -> Stream.of(
                        mlPerDay(cup.came()), forecast(cup).low(), forecast(cup).high()))
                .mapToDouble(perDay::of)
                .summaryStatistics();
        NumberAxis number = new NumberAxis();
        number.setRange(0.4, Math.max(5, cups.size()) + 0.6);
        number.setTickUnit(new NumberTickUnit(cups.size() > 10 ? 5 : 1));
        ChartStyle style = new ChartStyle(palette, font);
        style.dress(number);
        Pane pane = Pane.amounts(dress, font, dress.text("score.axis", perDay.symbol()))
                .range(0.8 * Math.min(band.low(), all.getMin()), 1.6 * Math.max(band.high(), all.getMax()))
                .band(band)
                .dots(came(perDay, true), new Ellipse2D.Double(-4, -4, 8, 8), palette.ink(), palette.ink())
                .dots(came(perDay, false), ShapeUtils.createDiagonalCross(5, 1.2f), palette.danger(), palette.danger());
        for (int i = 0; i < cups.size(); i++) {
            Range told = perDay.of(forecast(cups.get(i)));
            pane.straight(i + 1, told.low(), i + 1, told.high(), Palette.fade(palette.accent(), 110), BAR);
        }
        style.draw(pane.over(number), graphics, area);
    }

    private Stream<double[]> came(Shown perDay, boolean held) {
        return IntStream.range(0, cups.size())
                .filter(i -> holds(cups.get(i)) == held)
                .mapToObj(i ->
                        new double[] {i + 1, perDay.of(mlPerDay(cups.get(i).came()))});
    }

    @Override
    public String describe(Words words) {
        return words.of("score.describe", cups.size(), held());
    }

    @Override
    public List<String> columns(Words words) {
        return List.of(
                words.of("strip.column.when"),
                words.of("score.column.forecast"),
                words.of("score.column.came"),
                words.of("score.column.held"));
    }

    @Override
    public List<List<String>> rows(Words words) {
        return cups.stream()
                .map(cup -> List.of(
                        words.say(clock.when(cup.at())),
                        words.say(forecast(cup), Unit.MILLILITRE_PER_DAY),
                        words.say(mlPerDay(cup.came()), Unit.MILLILITRE_PER_DAY),
                        words.of(holds(cup) ? "score.held" : "score.missed")))
                .toList();
    }
}
