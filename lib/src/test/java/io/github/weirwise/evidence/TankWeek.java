package io.github.weirwise.evidence;

import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankRun;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.WeirSetting;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Draws a week of the small unit with the weir right, too low and too high, washed on Thursday: docs/pictures/tank-week.svg. */
final class TankWeek {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 400;
    private static final int LEFT = 64;
    private static final int RIGHT = 620;
    private static final int TOP = 40;
    private static final int BOTTOM = 340;
    private static final double WEEK_HOURS = 168;
    private static final double LEAST_ML = 5;
    private static final double MOST_ML = 2000;
    private static final double WASH_HOUR = 82;

    private record Line(String words, double moveMm, String colour, String dashes) {}

    private static final List<Line> LINES = List.of(
            new Line("too wet (+5 mm)", 5, "#1b6ca8", "7 3"),
            new Line("right", 0, "#2e7d32", ""),
            new Line("too dry (\u22125 mm)", -5, "#9a5b13", "2 3"));

    private TankWeek() {}

    static final Path FILE = Path.of("docs", "pictures", "tank-week.svg");

    static void run(String[] options) throws IOException {
        StringBuilder result = new StringBuilder("result:");
        String svg = draw(result);
        Files.createDirectories(FILE.getParent());
        Files.writeString(FILE, svg, StandardCharsets.UTF_8);
        System.out.println("written: " + FILE);
        System.out.println(result);
    }

    /** The drawing; the keys of the last line go into {@code result}. */
    static String draw(StringBuilder result) {
        TankPlan plan = TankScenes.plan(FirstRoundUnits.small());
        TankState settled = TankScenes.settled(plan);
        StringBuilder svg = new StringBuilder(head());
        axes(svg);
        for (Line line : LINES) {
            TankRun run = week(plan, settled, line.moveMm());
            curve(svg, line, run);
            double litres = (run.end().of(Stock.SKIMMATE_ML) - settled.of(Stock.SKIMMATE_ML)) / 1000;
            double skimmable =
                    run.end().of(Stock.SKIMMABLE_G) * 1000 / plan.body().runningLitres();
            String key = line.moveMm() == 0 ? "right" : line.moveMm() > 0 ? "wet" : "dry";
            System.out.printf(
                    Locale.ROOT,
                    "%-18s %.2f L of skimmate in the week, %.2f mg/L skimmable left%n",
                    line.words(),
                    litres,
                    skimmable);
            result.append(String.format(Locale.ROOT, " %sLitres=%.3f", key, litres));
        }
        return svg.append("</svg>\n").toString();
    }

    private static TankRun week(TankPlan plan, TankState settled, double moveMm) {
        double now = settled.hours();
        TankSimulator simulator = new TankSimulator(plan);
        SkimmerUnit unit = plan.unit();
        double right = WeirSetting.crestForSkimmate(
                        unit, simulator.settings(settled), unit.target().skimmateMlPerDay())
                .orElseThrow();
        List<TankEvent> events = List.of(
                new TankEvent.WeirSet(now, right + moveMm), new TankEvent.Serviced(now + WASH_HOUR, TankPart.NECK));
        return simulator.run(settled, now + WEEK_HOURS, events, 0.5);
    }

    private static String head() {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
                        + " font-size=\"13\" role=\"img\">%n<title>A week of a skimmer set right, too dry and too wet"
                        + "</title>%n<desc>Skimmate in millilitres a day on a logarithmic scale over seven days; the neck"
                        + " is washed on Thursday.</desc>%n<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n",
                WIDTH,
                HEIGHT);
    }

    private static void axes(StringBuilder svg) {
        for (double ml : new double[] {5, 10, 20, 50, 100, 200, 500, 1000, 2000}) {
            double y = yOf(ml);
            rule(svg, LEFT, y, RIGHT, y, "#ddd");
            text(svg, LEFT - 8, y + 4, "end", "#333", String.format(Locale.ROOT, "%.0f", ml));
        }
        List<String> days = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
        for (int day = 0; day <= days.size(); day++) {
            rule(svg, xOf(24 * day), TOP, xOf(24 * day), BOTTOM, "#ddd");
            if (day < days.size()) {
                text(svg, xOf(24 * day + 12), BOTTOM + 20, "middle", "#333", days.get(day));
            }
        }
        text(svg, LEFT, 22, "start", "#333", "Skimmate, mL a day");
        rule(svg, xOf(WASH_HOUR), TOP, xOf(WASH_HOUR), BOTTOM, "#888");
        text(svg, xOf(WASH_HOUR) + 4, TOP + 16, "start", "#555", "neck washed");
        text(
                svg,
                LEFT,
                BOTTOM + 46,
                "start",
                "#555",
                "Small unit, 300 L, two meals a day; the weir is set on Monday at midnight.");
    }

    private static void curve(StringBuilder svg, Line line, TankRun run) {
        double from = run.end().hours() - WEEK_HOURS;
        StringBuilder points = new StringBuilder();
        for (TankState state : run.samples()) {
            points.append(String.format(
                    Locale.ROOT, "%.1f,%.1f ", xOf(state.hours() - from), yOf(state.of(Stock.SKIMMATE_ML_PER_DAY))));
        }
        svg.append(String.format(
                Locale.ROOT,
                "<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\" points=\"%s\"/>%n",
                line.colour(),
                line.dashes(),
                points.toString().trim()));
        double last = run.end().of(Stock.SKIMMATE_ML_PER_DAY);
        text(svg, RIGHT + 8, yOf(last) + 4, "start", line.colour(), line.words());
    }

    private static void rule(StringBuilder svg, double x1, double y1, double x2, double y2, String colour) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>%n",
                x1,
                y1,
                x2,
                y2,
                colour));
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String colour, String words) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>%n",
                x,
                y,
                anchor,
                colour,
                words));
    }

    private static double xOf(double hours) {
        return LEFT + (RIGHT - LEFT) * hours / WEEK_HOURS;
    }

    private static double yOf(double ml) {
        double clamped = Math.max(LEAST_ML, Math.min(MOST_ML, ml));
        return BOTTOM - (BOTTOM - TOP) * Math.log(clamped / LEAST_ML) / Math.log(MOST_ML / LEAST_ML);
    }
}
