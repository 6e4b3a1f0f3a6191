package io.github.weirwise.sheet;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation.CupVolume;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Skimmate per day against time as SVG, with the wanted band, the weir's crest as steps on a scale of its own, and a mark for
 * each service. It reads in grey as well as in colour: dots, steps and diamonds differ by shape.
 *
 * @param book language and units
 * @param zone the unit's time zone
 */
record TuningChart(PhraseBook book, ZoneId zone) {
    /** The chart reaches back this far at most, days. */
    static final int DAYS = 60;

    private static final double LEFT = 54;
    private static final double RIGHT = 646;
    private static final double TOP = 26;
    private static final double BOTTOM = 176;
    private static final int ROWS = 4;

    private record Dot(Instant at, double mlPerDay, boolean atLeast) {}

    /** The drawing; without any cup volume it is a sentence instead. */
    String of(HandOver over) {
        Instant from = begin(over);
        List<Dot> dots = dots(over.journal(), from);
        if (dots.isEmpty()) {
            return Html.element("p", book.say(Phrase.of("sheet.chart.none")));
        }
        Target target = over.unit().target();
        double most = dots.stream().mapToDouble(Dot::mlPerDay).max().orElse(0);
        ChartScale amount = ChartScale.around(
                0, Math.max(most, target.skimmateBandMlPerDay().high()), BOTTOM, TOP, ROWS);
        ChartScale time = new ChartScale(0, Math.max(1, days(from, over.now())), LEFT, RIGHT);
        StringBuilder svg = new StringBuilder();
        String title = Html.escaped(book.say(Phrase.of("sheet.chart.title")));
        svg.append("<svg viewBox=\"0 0 700 222\" role=\"img\" aria-label=\"")
                .append(title)
                .append("\">\n");
        svg.append("<title>").append(title).append("</title>\n");
        band(svg, target.skimmateBandMlPerDay(), amount);
        amountMarks(svg, amount);
        timeMarks(svg, time, from, over.now());
        crest(svg, over, from, time);
        services(svg, over.journal(), from, time);
        dots(svg, dots, from, time, amount);
        return svg.append("</svg>\n").toString();
    }

    private static Instant begin(HandOver over) {
        Instant earliest = over.now().minus(DAYS, ChronoUnit.DAYS);
        Instant first = over.journal().entries().isEmpty()
                ? over.now()
                : over.journal().entries().get(0).at();
        return first.isAfter(earliest) ? first : earliest;
    }

    private static List<Dot> dots(Journal journal, Instant from) {
        List<Dot> dots = new ArrayList<>();
        for (Reading reading : journal.all(Reading.class)) {
            if (!reading.at().isBefore(from)) {
                reading.find(CupVolume.class)
                        .ifPresent(cup -> dots.add(new Dot(reading.at(), cup.mlPerDay(), cup.full())));
            }
        }
        return dots;
    }

    private void band(StringBuilder svg, Range wanted, ChartScale amount) {
        double top = amount.at(Math.min(amount.high(), wanted.high()));
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#e3eee3\"/>\n",
                LEFT,
                top,
                RIGHT - LEFT,
                amount.at(wanted.low()) - top));
    }

    private void amountMarks(StringBuilder svg, ChartScale amount) {
        for (double mark : amount.marks(ROWS)) {
            double y = amount.at(mark);
            svg.append(line(LEFT, y, RIGHT, y, "#cccccc"));
            svg.append(label(LEFT - 6, y + 3, "end", book.number(mark, Unit.MILLILITRE_PER_DAY)));
        }
        svg.append(label(
                LEFT - 48, 14, "start", book.say(Phrase.of("sheet.chart.amount", symbol(Unit.MILLILITRE_PER_DAY)))));
    }

    private void timeMarks(StringBuilder svg, ChartScale time, Instant from, Instant to) {
        svg.append(line(LEFT, BOTTOM, RIGHT, BOTTOM, "#333333"));
        long step = Math.max(1, Math.round(days(from, to) / 6));
        LocalDate day = from.atZone(zone).toLocalDate().plusDays(1);
        for (; day.atStartOfDay(zone).toInstant().isBefore(to); day = day.plusDays(step)) {
            double x = time.at(days(from, day.atStartOfDay(zone).toInstant()));
            svg.append(line(x, BOTTOM, x, BOTTOM + 4, "#333333"));
            svg.append(label(x, BOTTOM + 15, "middle", day.toString()));
        }
    }

    /** The crest that the journal tells of; before its first move nothing is known and nothing is drawn. */
    private void crest(StringBuilder svg, HandOver over, Instant from, ChartScale time) {
        List<WeirMove> moves = over.journal().all(WeirMove.class);
        if (moves.isEmpty()) {
            return;
        }
        double least = moves.stream().mapToDouble(WeirMove::toCrestMm).min().orElse(0);
        double most = moves.stream().mapToDouble(WeirMove::toCrestMm).max().orElse(0);
        ChartScale height = ChartScale.around(least - 2, most + 2, BOTTOM, TOP, ROWS);
        StringBuilder path = new StringBuilder();
        for (WeirMove move : moves) {
            double x = time.at(Math.max(0, days(from, move.at())));
            String next = String.format(Locale.ROOT, "%.1f,%.1f ", x, height.at(move.toCrestMm()));
            path.append(path.isEmpty() ? "M" + next : "H" + next.substring(0, next.indexOf(',')) + " L" + next);
        }
        path.append(String.format(Locale.ROOT, "H%.1f", RIGHT));
        svg.append("<path d=\"").append(path).append("\" fill=\"none\" stroke=\"#7a4b00\" stroke-width=\"1.5\" ");
        svg.append("stroke-dasharray=\"5 3\"/>\n");
        for (double mark : height.marks(ROWS)) {
            svg.append(label(RIGHT + 6, height.at(mark) + 3, "start", book.number(mark, Unit.MILLIMETRE)));
        }
        svg.append(label(RIGHT + 50, 14, "end", book.say(Phrase.of("sheet.chart.crest", symbol(Unit.MILLIMETRE)))));
    }

    private void services(StringBuilder svg, Journal journal, Instant from, ChartScale time) {
        for (Service service : journal.all(Service.class)) {
            if (!service.at().isBefore(from)) {
                double x = time.at(days(from, service.at()));
                svg.append(String.format(
                        Locale.ROOT,
                        "<path d=\"M%.1f,%.1f l4,4 l-4,4 l-4,-4 z\" fill=\"#444444\"/>\n",
                        x,
                        BOTTOM + 20));
            }
        }
        svg.append(label(LEFT, BOTTOM + 42, "start", book.say(Phrase.of("sheet.chart.legend"))));
    }

    private static void dots(StringBuilder svg, List<Dot> dots, Instant from, ChartScale time, ChartScale amount) {
        StringBuilder path = new StringBuilder();
        StringBuilder marks = new StringBuilder();
        for (Dot dot : dots) {
            double x = time.at(days(from, dot.at()));
            double y = amount.at(dot.mlPerDay());
            path.append(String.format(Locale.ROOT, "%s%.1f,%.1f ", path.isEmpty() ? "M" : "L", x, y));
            marks.append(String.format(
                    Locale.ROOT,
                    dot.atLeast()
                            ? "<path d=\"M%.1f,%.1f m-4,3 l8,0 l-4,-7 z\" fill=\"#ffffff\" stroke=\"#0b4f6c\"/>\n"
                            : "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"#0b4f6c\"/>\n",
                    x,
                    y));
        }
        svg.append("<path d=\"").append(path).append("\" fill=\"none\" stroke=\"#0b4f6c\"/>\n");
        svg.append(marks);
    }

    private String symbol(Unit unit) {
        return unit.symbol(book.units());
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

    private static String label(double x, double y, String anchor, String words) {
        return String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">", x, y, anchor)
                + Html.escaped(words)
                + "</text>\n";
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 86_400_000.0;
    }
}
