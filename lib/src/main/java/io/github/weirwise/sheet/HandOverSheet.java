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
    /** Denser than other pages, so that it prints on two sheets. */
    private static final String STYLE =
            "body { font-size: 9pt; line-height: 1.25 } h2 { margin-top: 3mm } td, th { padding: .4mm 2mm .4mm 0 }\n";

    /** Rejects nulls. */
    public HandOverSheet {
        Objects.requireNonNull(book, "book");
        Objects.requireNonNull(zone, "zone");
    }

    /** The page, to be written in UTF-8. */
    public String of(HandOver over) {
        Page page = new Page(book, over.unit().name(), STYLE);
        page.element("p", say("sheet.handover.made", moment(over.now())));
        page.head("sheet.handover.setup").raw("<div class=\"two\">\n<table>\n");
        setup(page, over);
        page.raw("</table>\n</div>\n").head("sheet.handover.tuning");
        page.raw(new TuningChart(book, over, zone).drawn());
        history(page, over);
        page.head("sheet.handover.due").raw("<table>\n");
        due(page, over);
        page.raw("</table>\n").head("sheet.handover.cautions").raw("<ul class=\"two\">\n");
        for (Warning caution : CareCaution.all()) {
            String severity = caution.severity().name().toLowerCase(Locale.ROOT);
            page.raw("<li class=\"" + severity + "\">" + Html.escaped(book.say(caution)) + "</li>\n");
        }
        for (CareNever never : CareNever.values()) {
            page.element("li", book.say(never.words()));
        }
        return page.raw("</ul>\n").end();
    }

    private void setup(Page page, HandOver over) {
        SkimmerUnit unit = over.unit();
        Settings settings = over.settings();
        OperatingPoint point = OperatingPoint.of(unit, settings);
        row(page, "crest", Quantity.of(settings.weirCrestMm(), Unit.MILLIMETRE));
        row(page, "flow", Quantity.of(settings.flowLitresPerHour(), Unit.LITRE_PER_HOUR));
        row(page, "air", Quantity.of(settings.airLitresPerHour(), Unit.LITRE_PER_HOUR));
        row(page, "head", Quantity.of(point.headMm(), Unit.MILLIMETRE));
        row(page, "submergence", QuantityRange.of(point.submergenceBandMm(), Unit.MILLIMETRE));
        row(page, "water", Quantity.of(settings.waterCelsius(), Unit.CELSIUS));
        row(page, "salinity", Quantity.of(settings.practicalSalinity(), Unit.SALINITY));
        row(page, "wanted", Band.of(unit.target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY));
        row(page, "dark", Band.of(unit.target().darknessPtCo(), Unit.PLATINUM_COBALT));
        row(page, "cup", Quantity.of(unit.cupMl(), Unit.MILLILITRE));
        over.fit().ifPresent(fit -> {
            row(page, "running", Quantity.of(fit.filling().levelRunningMm(), Unit.MILLIMETRE));
            row(page, "powerCut", Quantity.of(fit.drainBack().totalLitres(), Unit.LITRE));
            row(page, "room", Quantity.of(fit.drainBack().freeLitres(), Unit.LITRE));
            row(page, "container", Quantity.of(fit.installation().hose().containerLitres(), Unit.LITRE));
        });
    }

    private void row(Page page, String name, Object value) {
        page.named(say("sheet.handover." + name), say("report.words", value));
    }

    private void history(Page page, HandOver over) {
        List<HistoryLine> told = HistoryLine.of(over.journal(), zone);
        int older = Math.max(0, told.size() - HISTORY_LINES);
        over.journal()
                .last(Reading.class)
                .ifPresent(reading -> page.element(
                        "p", cut(say("sheet.handover.lastReading", moment(reading.at()), EntryWords.of(reading)))));
        if (told.isEmpty()) {
            page.element("p", say("sheet.handover.noHistory"));
        }
        if (older > 0) {
            page.element("p", say("sheet.handover.older", Count.of(older, "report.count.entries")));
        }
        page.raw("<table class=\"history\">\n");
        told.subList(older, told.size()).forEach(line -> page.named(moment(line.at()), cut(book.say(line.words()))));
        page.raw("</table>\n");
    }

    private void due(Page page, HandOver over) {
        page.cells(
                "<tr>",
                "th",
                "th",
                page.all(
                        "sheet.handover.task",
                        "sheet.handover.when",
                        "sheet.handover.last",
                        "sheet.handover.interval"));
        for (CareItem item : over.plan().items()) {
            if (item.task() != CareTask.LOOK) {
                boolean late = item.state().compareTo(CareState.DUE) >= 0;
                List<String> cells = List.of(
                        book.say(item.task().what()),
                        day(item.due()) + ", " + book.say(item.state().words()),
                        item.lastDone().map(this::day).orElseGet(() -> say("sheet.handover.never")),
                        book.say(item.interval().reason()));
                page.cells(late ? "<tr class=\"late\">" : "<tr>", "td", "td", cells);
            }
        }
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
