package io.github.weirwise.lab.score;

import io.github.weirwise.score.Scored;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/** Forecast ranges as bars and what came as dots, over the days of a journal; an SVG. */
final class ScorePlot {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 260;
    private static final int LEFT = 60;
    private static final int BOTTOM = 30;
    private static final int TOP = 12;

    private final List<Scored> all;
    private final String title;
    private final double low;
    private final double high;
    private final double days;
    private final StringBuilder svg = new StringBuilder();

    private ScorePlot(List<Scored> all, String title, double low, double high) {
        this.all = all;
        this.title = title;
        this.low = low;
        this.high = high;
        days = Math.max(1, day(all.get(all.size() - 1)));
    }

    /** Amounts on a scale of logarithms, from a hundredth to a hundred times the wanted one, with the band. */
    static String ofAmounts(List<Scored> amounts) {
        ScorePlot plot = new ScorePlot(amounts, "Amount over the wanted one", Math.log(0.02), Math.log(12));
        plot.begin();
        plot.band(Math.log(0.4), Math.log(2.4));
        for (double tick : new double[] {0.02, 0.1, 0.4, 1, 2.4, 10}) {
            plot.tick(
                    Math.log(tick),
                    String.format(Locale.ROOT, "x%s", tick >= 1 && tick == Math.rint(tick) ? Math.round(tick) : tick));
        }
        return plot.end();
    }

    /** Levels in millimetres. */
    static String ofLevels(List<Scored> levels, double wantedMm) {
        double least = levels.stream()
                .mapToDouble(each -> Math.min(each.came(), each.forecast().low()))
                .min()
                .orElse(0);
        double most = levels.stream()
                .mapToDouble(each -> Math.max(each.came(), each.forecast().high()))
                .max()
                .orElse(1);
        ScorePlot plot = new ScorePlot(levels, "Level over the funnel base, mm", least - 3, most + 3);
        plot.begin();
        plot.band(wantedMm - 0.5, wantedMm + 0.5);
        double step = most - least > 60 ? 20 : 10;
        for (double tick = Math.ceil(least / step) * step; tick <= most; tick += step) {
            plot.tick(tick, String.format(Locale.ROOT, "%.0f", tick));
        }
        return plot.end();
    }

    private double day(Scored each) {
        return Duration.between(all.get(0).at(), each.at()).toMinutes() / 1440.0;
    }

    private void begin() {
        svg.append(say(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"%s, stated ranges and readings\" viewBox=\"0 0 %d %d\">%n",
                title, WIDTH, HEIGHT));
        svg.append(say("<text x=\"%d\" y=\"10\" font-size=\"11\">%s</text>%n", LEFT, title));
    }

    private void band(double from, double to) {
        svg.append(say(
                "<rect x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\" fill=\"#e4efe4\"/>%n",
                LEFT, y(to), WIDTH - LEFT, y(from) - y(to)));
    }

    private void tick(double at, String words) {
        svg.append(say(
                "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#ccc\"/><text x=\"%d\" y=\"%.1f\" font-size=\"11\" text-anchor=\"end\">%s</text>%n",
                LEFT, WIDTH, y(at), y(at), LEFT - 6, y(at) + 4, words));
    }

    private String end() {
        for (double day = 0; day <= days; day += Math.max(1, Math.ceil(days / 12))) {
            svg.append(say(
                    "<text x=\"%.1f\" y=\"%d\" font-size=\"11\" text-anchor=\"middle\">day %.0f</text>%n",
                    x(day), HEIGHT - 8, day));
        }
        for (Scored each : all) {
            double x = x(day(each));
            boolean held = each.forecast().holds(each.came());
            svg.append(say(
                    "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#6b8fb3\" stroke-width=\"4\" stroke-opacity=\"0.5\"/>%n",
                    x, x, y(each.forecast().low()), y(each.forecast().high())));
            svg.append(say(
                    held
                            ? "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"#1d3f5e\"/>%n"
                            : "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#fff\" stroke=\"#c0392b\" stroke-width=\"2\"/>%n",
                    x,
                    y(each.came())));
        }
        return svg.append("</svg>\n").toString();
    }

    private double x(double day) {
        return LEFT + 8 + (WIDTH - LEFT - 16) * day / days;
    }

    private double y(double value) {
        double held = Math.max(low, Math.min(high, value));
        return TOP + (HEIGHT - TOP - BOTTOM) * (high - held) / (high - low);
    }

    private static String say(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
