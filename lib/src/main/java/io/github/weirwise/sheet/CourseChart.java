package io.github.weirwise.sheet;

import io.github.weirwise.practice.Lane;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Target;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Courses of one tank under several hands as SVG: level, skimmate a day on a logarithmic scale with its band, and the cup,
 * on one time axis, with a numbered flag for each act. Lines differ by dash as well as by colour.
 *
 * @param book language and units
 * @param target what is wanted
 */
record CourseChart(PhraseBook book, Target target) {
    private static final double WIDTH = 700;
    private static final double LEFT = 58;
    private static final double RIGHT = 690;
    private static final double PANEL = 92;
    private static final double GAP = 32;
    private static final double TOP = 34;
    private static final double FLAG = 12;
    private static final double LEAST_ML = 1;
    private static final List<String> COLOURS = List.of("#0072b2", "#d55e00", "#595f69");
    private static final List<String> DASHES = List.of("none", "7 3", "2 3");

    /** One of the stacked panels. */
    private record Panel(String key, Unit unit, boolean logarithmic, ToDoubleFunction<TrackPoint> value) {
        double shown(TrackPoint point) {
            double raw = value.applyAsDouble(point);
            return logarithmic ? Math.log10(Math.max(LEAST_ML, raw)) : raw;
        }
    }

    /** The chart of some lanes, the first one's acts flagged. */
    String of(List<Lane> lanes) {
        List<Panel> panels = List.of(
                new Panel("sheet.course.level", Unit.MILLIMETRE, false, TrackPoint::submergenceMm),
                new Panel("sheet.course.amount", Unit.MILLILITRE_PER_DAY, true, TrackPoint::skimmateMlPerDay),
                new Panel("sheet.course.cup", Unit.MILLILITRE, false, TrackPoint::collectedMl));
        ChartScale time = time(lanes);
        double height = TOP + panels.size() * (PANEL + GAP) + 22;
        StringBuilder svg = open(WIDTH, height, book.say(Phrase.of("sheet.course.title")));
        for (int i = 0; i < panels.size(); i++) {
            panel(svg, panels.get(i), lanes, time, TOP + i * (PANEL + GAP));
        }
        double bottom = TOP + panels.size() * (PANEL + GAP) - GAP;
        flags(svg, lanes.get(0), time, bottom);
        days(svg, time, bottom);
        legend(svg, lanes, height - 6);
        return svg.append("</svg>\n").toString();
    }

    /** A small chart of the amount alone. */
    String small(List<Lane> lanes) {
        Panel panel = new Panel("sheet.course.amount", Unit.MILLILITRE_PER_DAY, true, TrackPoint::skimmateMlPerDay);
        ChartScale time = time(lanes);
        StringBuilder svg = open(WIDTH, TOP + PANEL + 30, book.say(Phrase.of("sheet.course.title")));
        panel(svg, panel, lanes, time, TOP);
        flags(svg, lanes.get(0), time, TOP + PANEL);
        days(svg, time, TOP + PANEL);
        return svg.append("</svg>\n").toString();
    }

    private static StringBuilder open(double width, double height, String title) {
        return new StringBuilder(String.format(
                        Locale.ROOT, "<svg viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"", width, height))
                .append(Html.escaped(title))
                .append("\">\n");
    }

    private static ChartScale time(List<Lane> lanes) {
        double from = lanes.get(0).track().get(0).hours();
        double until = lanes.stream()
                .mapToDouble(lane -> lane.track().get(lane.track().size() - 1).hours())
                .max()
                .orElse(from);
        return new ChartScale(from, Math.max(until, from + 1), LEFT, RIGHT);
    }

    private void panel(StringBuilder svg, Panel panel, List<Lane> lanes, ChartScale time, double top) {
        double bottom = top + PANEL;
        ChartScale scale = scale(panel, lanes, top, bottom);
        svg.append(text(LEFT, top - 7, "start", title(panel)));
        if (panel.logarithmic()) {
            Range band = target.skimmateBandMlPerDay();
            double high = scale.at(Math.min(scale.high(), Math.log10(band.high())));
            double low = scale.at(Math.max(scale.low(), Math.log10(band.low())));
            svg.append(String.format(
                    Locale.ROOT,
                    "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#dcebe2\"/>\n",
                    LEFT,
                    high,
                    RIGHT - LEFT,
                    low - high));
        }
        for (double mark : scale.marks(panel.logarithmic() ? (int) Math.max(1, scale.high() - scale.low()) : 3)) {
            double shown = panel.logarithmic() ? Math.pow(10, mark) : mark;
            svg.append(line(LEFT, scale.at(mark), RIGHT, scale.at(mark), "#d5d8dc"));
            svg.append(text(LEFT - 4, scale.at(mark) + 3, "end", book.number(shown, panel.unit())));
        }
        for (int i = lanes.size() - 1; i >= 0; i--) {
            path(svg, lanes.get(i).track(), panel, time, scale, i);
        }
        svg.append(line(LEFT, top, LEFT, bottom, "#595f69"));
        svg.append(line(LEFT, bottom, RIGHT, bottom, "#595f69"));
    }

    private String title(Panel panel) {
        return book.say(Phrase.of(panel.key(), panel.unit().symbol(book.units())));
    }

    private static ChartScale scale(Panel panel, List<Lane> lanes, double top, double bottom) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Lane lane : lanes) {
            for (TrackPoint point : lane.track()) {
                least = Math.min(least, panel.shown(point));
                most = Math.max(most, panel.shown(point));
            }
        }
        if (panel.logarithmic()) {
            return new ChartScale(Math.min(1, Math.floor(least)), Math.max(3, Math.ceil(most)), bottom, top);
        }
        return ChartScale.around(least, Math.max(most, least + 1), bottom, top, 3);
    }

    private static void path(
            StringBuilder svg, List<TrackPoint> track, Panel panel, ChartScale time, ChartScale scale, int lane) {
        svg.append("<path d=\"");
        for (int i = 0; i < track.size(); i++) {
            svg.append(String.format(
                    Locale.ROOT,
                    "%s%.1f,%.1f ",
                    i == 0 ? "M" : "L",
                    time.at(track.get(i).hours()),
                    scale.at(panel.shown(track.get(i)))));
        }
        svg.append(String.format(
                Locale.ROOT,
                "\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\" stroke-dasharray=\"%s\"/>\n",
                COLOURS.get(lane % COLOURS.size()),
                lane == 0 ? "2" : "1.4",
                DASHES.get(lane % DASHES.size())));
    }

    private static void flags(StringBuilder svg, Lane lane, ChartScale time, double bottom) {
        int number = 0;
        for (Lane.Mark mark : lane.marks()) {
            double x = time.at(mark.atHours());
            if (mark.act()) {
                number++;
                svg.append(String.format(
                        Locale.ROOT,
                        "<path d=\"M%.1f,%.1f V%.1f\" stroke=\"#1f2933\" stroke-dasharray=\"1 3\"/>\n",
                        x,
                        FLAG,
                        bottom));
                svg.append(text(x, FLAG - 2, "middle", Integer.toString(number)));
            } else {
                svg.append(line(x, bottom, x, bottom + 5, "#1f2933"));
            }
        }
    }

    private void days(StringBuilder svg, ChartScale time, double bottom) {
        double first = Math.ceil(time.low() / 24) * 24;
        double every = Math.max(1, Math.ceil((time.high() - time.low()) / 24 / 14)) * 24;
        for (double hour = first; hour <= time.high(); hour += every) {
            svg.append(line(time.at(hour), bottom, time.at(hour), bottom + 3, "#595f69"));
            svg.append(text(
                    time.at(hour), bottom + 14, "middle", book.say(Phrase.of("sheet.course.day", (int) (hour / 24)))));
        }
    }

    private void legend(StringBuilder svg, List<Lane> lanes, double y) {
        for (int i = 0; i < lanes.size(); i++) {
            double x = LEFT + 150 * i;
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f,%.1f h24\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>\n",
                    x,
                    y - 3,
                    COLOURS.get(i % COLOURS.size()),
                    DASHES.get(i % DASHES.size())));
            svg.append(text(x + 28, y, "start", book.say(lanes.get(i).who())));
        }
    }

    private static String line(double x1, double y1, double x2, double y2, String colour) {
        return String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>\n",
                x1,
                y1,
                x2,
                y2,
                colour);
    }

    private static String text(double x, double y, String anchor, String words) {
        return String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">", x, y, anchor)
                + Html.escaped(words)
                + "</text>\n";
    }
}
