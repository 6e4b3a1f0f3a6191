package io.github.weirwise.sheet;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Panels over one another on one axis of time, as SVG. It reads in grey as well as in colour: lines differ by dash, dots and marks by shape.
 *
 * @param book language and units
 * @param from where time begins, in the unit of the points
 * @param until where it ends, later
 */
record PanelChart(PhraseBook book, double from, double until) {
    static final double LEFT = 58;
    static final double RIGHT = 690;
    static final double TOP = 34;
    private static final double WIDTH = 700;
    private static final double GAP = 32;
    private static final double FLAG = 12;
    private static final double LEAST_LOGARITHMIC = 1;
    private static final List<String> COLOURS = List.of("#0072b2", "#d55e00", "#595f69");
    private static final List<String> DASHES = List.of("none", "7 3", "2 3");

    /**
     * A point of a line.
     *
     * @param atLeast whether the true value is this or more
     */
    record Point(double at, double value, boolean atLeast) {}

    /**
     * One panel.
     *
     * @param title above it
     * @param unit of its values
     * @param logarithmic whether tens are equally far apart
     * @param height of the panel
     * @param wanted the wanted band, if there is one
     * @param dots whether points are drawn besides lines
     * @param lines its lines, the most important first
     */
    record Panel(
            String title,
            Unit unit,
            boolean logarithmic,
            double height,
            Optional<Range> wanted,
            boolean dots,
            List<List<Point>> lines) {
        double shown(double value) {
            return logarithmic ? Math.log10(Math.max(LEAST_LOGARITHMIC, value)) : value;
        }

        ChartScale scale(double top) {
            Stream<Double> bounds =
                    wanted.stream().flatMap(band -> Stream.of(logarithmic ? band.low() : 0, band.high()));
            List<Double> all = Stream.concat(
                            bounds, lines.stream().flatMap(List::stream).map(Point::value))
                    .map(this::shown)
                    .sorted()
                    .toList();
            double least = all.get(0);
            double most = all.get(all.size() - 1);
            return logarithmic
                    ? new ChartScale(Math.min(1, Math.floor(least)), Math.max(3, Math.ceil(most)), top + height, top)
                    : ChartScale.around(least, Math.max(most, least + 1), top + height, top, 3);
        }
    }

    /**
     * A place on the axis of time.
     *
     * @param label in words; empty for a place without
     */
    record Mark(double at, String label) {}

    /**
     * The drawing.
     *
     * @param title what a reader of screens says
     * @param panels from top to bottom
     * @param days labels below the axis
     * @param marks numbers over a line through all panels, and a diamond below the axis where the label is empty
     * @param legend a name for each line
     */
    String of(String title, List<Panel> panels, List<Mark> days, List<Mark> marks, List<String> legend) {
        double bottom = TOP
                - GAP
                + panels.stream().mapToDouble(each -> each.height() + GAP).sum();
        StringBuilder svg = new StringBuilder(String.format(
                        Locale.ROOT,
                        "<svg font-family=\"sans-serif\" font-size=\"9\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"",
                        WIDTH,
                        bottom + 40))
                .append(Html.escaped(title))
                .append("\">\n");
        ChartScale time = new ChartScale(from, until, LEFT, RIGHT);
        double top = TOP;
        for (Panel panel : panels) {
            panel(svg, panel, time, top);
            top += panel.height() + GAP;
        }
        for (Mark day : days) {
            double x = time.at(day.at());
            line(svg, x, bottom, x, bottom + 3, "#595f69");
            text(svg, x, bottom + 14, "middle", day.label());
        }
        for (Mark mark : marks) {
            double x = time.at(mark.at());
            if (mark.label().isEmpty()) {
                add(svg, "<path d=\"M%.1f,%.1f l4,4 l-4,4 l-4,-4 z\" fill=\"#444444\"/>", x, bottom + 18);
            } else {
                add(svg, "<path d=\"M%.1f,%.1f V%.1f\" stroke=\"#1f2933\" stroke-dasharray=\"1 3\"/>", x, FLAG, bottom);
                text(svg, x, FLAG - 2, "middle", mark.label());
            }
        }
        for (int i = 0; i < legend.size(); i++) {
            double x = LEFT + 150 * i;
            add(svg, "<path d=\"M%.1f,%.1f h24\" %s/>", x, bottom + 31, stroke(i, 2));
            text(svg, x + 28, bottom + 34, "start", legend.get(i));
        }
        return svg.append("</svg>\n").toString();
    }

    private void panel(StringBuilder svg, Panel panel, ChartScale time, double top) {
        double bottom = top + panel.height();
        ChartScale scale = panel.scale(top);
        text(svg, LEFT, top - 7, "start", panel.title());
        panel.wanted().ifPresent(band -> {
            double high = scale.at(panel.shown(band.high()));
            double low = scale.at(panel.shown(band.low()));
            String rectangle = "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#dcebe2\"/>";
            add(svg, rectangle, LEFT, high, RIGHT - LEFT, low - high);
        });
        for (double mark : scale.marks(panel.logarithmic() ? (int) Math.max(1, scale.high() - scale.low()) : 3)) {
            double value = panel.logarithmic() ? Math.pow(10, mark) : mark;
            line(svg, LEFT, scale.at(mark), RIGHT, scale.at(mark), "#d5d8dc");
            text(svg, LEFT - 4, scale.at(mark) + 3, "end", book.number(value, panel.unit()));
        }
        for (int i = panel.lines().size() - 1; i >= 0; i--) {
            points(svg, panel, panel.lines().get(i), time, scale, i);
        }
        line(svg, LEFT, top, LEFT, bottom, "#595f69");
        line(svg, LEFT, bottom, RIGHT, bottom, "#595f69");
    }

    private static void points(
            StringBuilder svg, Panel panel, List<Point> points, ChartScale time, ChartScale scale, int number) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            double x = time.at(point.at());
            double y = scale.at(panel.shown(point.value()));
            path.append(String.format(Locale.ROOT, "%s%.1f,%.1f ", path.isEmpty() ? "M" : "L", x, y));
            if (panel.dots()) {
                String shape = point.atLeast()
                        ? "<path d=\"M%.1f,%.1f m-4,3 l8,0 l-4,-7 z\" fill=\"#ffffff\" stroke=\"#0072b2\"/>"
                        : "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"#0072b2\"/>";
                add(svg, shape, x, y);
            }
        }
        add(svg, "<path d=\"%s\" fill=\"none\" %s/>", path, stroke(number, number == 0 ? 2 : 1.4));
    }

    private static String stroke(int number, double width) {
        String form = "stroke=\"%s\" stroke-width=\"%.1f\" stroke-dasharray=\"%s\"";
        int style = number % COLOURS.size();
        return String.format(Locale.ROOT, form, COLOURS.get(style), width, DASHES.get(style));
    }

    private static void line(StringBuilder svg, double x1, double y1, double x2, double y2, String colour) {
        add(svg, "<path d=\"M%.1f,%.1f L%.1f,%.1f\" stroke=\"%s\"/>", x1, y1, x2, y2, colour);
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        add(svg, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Html.escaped(words));
    }

    private static void add(StringBuilder svg, String form, Object... values) {
        svg.append(String.format(Locale.ROOT, form, values)).append('\n');
    }
}
