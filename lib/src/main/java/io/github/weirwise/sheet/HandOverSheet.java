package io.github.weirwise.sheet;

import io.github.weirwise.care.CareCaution;
import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CareNever;
import io.github.weirwise.care.CareState;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A hand-over as one HTML page that prints on one or two sheets: unit, set-up figures, chart and history of the tuning, what
 * is due, cautions. No scripts, nothing loaded from anywhere; whatever came from outside is escaped.
 *
 * @param book language and units
 * @param zone the unit's time zone
 */
public record HandOverSheet(PhraseBook book, ZoneId zone) {
    /** The history holds the newest entries, this many. */
    public static final int HISTORY_LINES = 16;

    private static final int LONGEST_LINE = 220;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final String STYLE = """
            @page { size: A4; margin: 11mm } @media screen { body { padding: 8mm } }
            body { font: 9pt/1.25 sans-serif; color: #111; max-width: 188mm; margin: 0 auto }
            h1 { font-size: 15pt; margin: 0 0 1mm } h2 { font-size: 11pt; margin: 3mm 0 1mm; break-after: avoid }
            p, ul, table { margin: 0 0 1mm } ul { padding-left: 4mm }
            table { border-collapse: collapse; width: 100% } tr, li, svg { break-inside: avoid }
            td, th { text-align: left; vertical-align: top; padding: .4mm 2mm .4mm 0; border-bottom: .2mm solid #ccc }
            th { font-weight: normal; color: #444 } td, li, h1 { overflow-wrap: anywhere }
            .date { white-space: nowrap } .late { font-weight: bold } .two { columns: 2; column-gap: 6mm } svg { width: 100%; height: auto }
            svg text { font: 9px sans-serif; fill: #333 } .danger { font-weight: bold }
            """;

    /** Rejects nulls. */
    public HandOverSheet {
        Objects.requireNonNull(book, "book");
        Objects.requireNonNull(zone, "zone");
    }

    /** The page, to be written in UTF-8. */
    public String of(HandOver over) {
        StringBuilder page = new StringBuilder();
        String name = Html.escaped(over.unit().name());
        page.append("<!DOCTYPE html>\n<html lang=\"")
                .append(Html.escaped(book.locale().toLanguageTag()))
                .append("\">\n<head>\n<meta charset=\"utf-8\"/>\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" ")
                .append("content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n<title>")
                .append(name)
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1><bdi>")
                .append(name)
                .append("</bdi></h1>\n");
        page.append(Html.element("p", say("sheet.handover.made", moment(over.now()))));
        head(page, "sheet.handover.setup");
        setup(page, over);
        head(page, "sheet.handover.tuning");
        page.append(new TuningChart(book, zone).of(over));
        history(page, over);
        head(page, "sheet.handover.due");
        due(page, over);
        head(page, "sheet.handover.cautions");
        cautions(page);
        return page.append("</body>\n</html>\n").toString();
    }

    private void head(StringBuilder page, String key) {
        page.append(Html.element("h2", say(key)));
    }

    private void setup(StringBuilder page, HandOver over) {
        SkimmerUnit unit = over.unit();
        Settings settings = over.settings();
        OperatingPoint point = OperatingPoint.of(unit, settings);
        page.append("<div class=\"two\">\n<table>\n");
        row(page, "sheet.handover.crest", Quantity.of(settings.weirCrestMm(), Unit.MILLIMETRE));
        row(page, "sheet.handover.flow", Quantity.of(settings.flowLitresPerHour(), Unit.LITRE_PER_HOUR));
        row(page, "sheet.handover.air", Quantity.of(settings.airLitresPerHour(), Unit.LITRE_PER_HOUR));
        row(page, "sheet.handover.head", Quantity.of(point.headMm(), Unit.MILLIMETRE));
        row(page, "sheet.handover.submergence", QuantityRange.of(point.submergenceBandMm(), Unit.MILLIMETRE));
        row(page, "sheet.handover.water", Quantity.of(settings.waterCelsius(), Unit.CELSIUS));
        row(page, "sheet.handover.salinity", Quantity.of(settings.practicalSalinity(), Unit.SALINITY));
        row(page, "sheet.handover.wanted", Band.of(unit.target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY));
        row(page, "sheet.handover.dark", Band.of(unit.target().darknessPtCo(), Unit.PLATINUM_COBALT));
        row(page, "sheet.handover.cup", Quantity.of(unit.cupMl(), Unit.MILLILITRE));
        over.fit().ifPresent(fit -> fitRows(page, fit));
        page.append("</table>\n</div>\n");
    }

    private void fitRows(StringBuilder page, FitCheck fit) {
        row(page, "sheet.handover.running", Quantity.of(fit.filling().levelRunningMm(), Unit.MILLIMETRE));
        row(page, "sheet.handover.powerCut", Quantity.of(fit.drainBack().totalLitres(), Unit.LITRE));
        row(page, "sheet.handover.room", Quantity.of(fit.drainBack().freeLitres(), Unit.LITRE));
        row(
                page,
                "sheet.handover.container",
                Quantity.of(fit.installation().hose().containerLitres(), Unit.LITRE));
    }

    private void row(StringBuilder page, String key, Object value) {
        page.append("<tr><th>")
                .append(Html.escaped(say(key)))
                .append("</th><td>")
                .append(Html.escaped(book.say(Phrase.of("report.words", value))))
                .append("</td></tr>\n");
    }

    private void history(StringBuilder page, HandOver over) {
        List<HistoryLine> told = HistoryLine.of(over.journal(), zone);
        int older = Math.max(0, told.size() - HISTORY_LINES);
        over.journal()
                .last(Reading.class)
                .ifPresent(reading -> page.append(Html.element(
                        "p", cut(say("sheet.handover.lastReading", moment(reading.at()), EntryWords.of(reading))))));
        if (told.isEmpty()) {
            page.append(Html.element("p", say("sheet.handover.noHistory")));
            return;
        }
        if (older > 0) {
            page.append(Html.element("p", say("sheet.handover.older", Count.of(older, "report.count.entries"))));
        }
        page.append("<table>\n");
        for (HistoryLine line : told.subList(older, told.size())) {
            page.append("<tr><th class=\"date\">")
                    .append(Html.escaped(moment(line.at())))
                    .append("</th><td><bdi>")
                    .append(Html.escaped(cut(book.say(line.words()))))
                    .append("</bdi></td></tr>\n");
        }
        page.append("</table>\n");
    }

    private void due(StringBuilder page, HandOver over) {
        page.append("<table>\n<tr>");
        for (String key : List.of(
                "sheet.handover.task", "sheet.handover.when", "sheet.handover.last", "sheet.handover.interval")) {
            cell(page, "th", say(key));
        }
        page.append("</tr>\n");
        for (CareItem item : over.plan().items()) {
            if (item.task() != CareTask.LOOK) {
                page.append(item.state().compareTo(CareState.DUE) >= 0 ? "<tr class=\"late\">" : "<tr>");
                cell(page, "td", book.say(item.task().what()));
                cell(
                        page,
                        "td class=\"date\"",
                        day(item.due()) + ", " + book.say(item.state().words()));
                cell(page, "td class=\"date\"", last(item));
                cell(page, "td", book.say(item.interval().reason()));
                page.append("</tr>\n");
            }
        }
        page.append("</table>\n");
    }

    private static void cell(StringBuilder page, String tag, String words) {
        String name = tag.substring(0, 2);
        page.append('<')
                .append(tag)
                .append('>')
                .append(Html.escaped(words))
                .append("</")
                .append(name)
                .append('>');
    }

    private String last(CareItem item) {
        return item.lastDone().map(this::day).orElseGet(() -> say("sheet.handover.never"));
    }

    private void cautions(StringBuilder page) {
        page.append("<ul class=\"two\">\n");
        for (Warning caution : CareCaution.all()) {
            page.append("<li class=\"")
                    .append(caution.severity().name().toLowerCase(Locale.ROOT))
                    .append("\">")
                    .append(Html.escaped(book.say(caution)))
                    .append("</li>\n");
        }
        for (CareNever never : CareNever.values()) {
            page.append(Html.element("li", book.say(never.words())));
        }
        page.append("</ul>\n");
    }

    private String say(String key, Object... values) {
        return book.say(Phrase.of(key, values));
    }

    private String cut(String words) {
        return words.codePointCount(0, words.length()) <= LONGEST_LINE
                ? words
                : words.substring(0, words.offsetByCodePoints(0, LONGEST_LINE)) + "\u2026";
    }

    private String day(Instant instant) {
        return DAY.format(instant.atZone(zone));
    }

    private String moment(Instant instant) {
        return MOMENT.format(instant.atZone(zone));
    }
}
