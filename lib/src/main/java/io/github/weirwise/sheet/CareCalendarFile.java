package io.github.weirwise.sheet;

import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareDate;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Warning;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/**
 * A care calendar as an iCalendar file (RFC 5545): one whole-day event a date and task, with what to do, why, what to expect
 * of the foam and the cautions.
 *
 * <p>An event's UID follows from unit, task and day alone, so that a later export replaces an event instead of doubling it.
 *
 * @param book language of the words
 * @param unitName what the unit's keeper calls it; any characters
 * @param stamp when the file is made
 * @since 0.1
 */
public record CareCalendarFile(PhraseBook book, String unitName, Instant stamp) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd");
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /**
     * @throws IllegalArgumentException if the name is blank
     */
    public CareCalendarFile {
        Objects.requireNonNull(book, "book");
        Require.text("unitName", unitName);
        Objects.requireNonNull(stamp, "stamp");
    }

    /** The file's text, to be written in UTF-8; its type is text/calendar. */
    public String of(CareCalendar calendar) {
        StringBuilder file = new StringBuilder();
        file.append(ContentLine.plain("BEGIN", "VCALENDAR"))
                .append(ContentLine.plain("VERSION", "2.0"))
                .append(ContentLine.plain("PRODID", "-//Weirwise//Care calendar//EN"))
                .append(ContentLine.plain("CALSCALE", "GREGORIAN"));
        for (CareDate date : calendar.dates()) {
            append(file, date);
        }
        return file.append(ContentLine.plain("END", "VCALENDAR")).toString();
    }

    private void append(StringBuilder file, CareDate date) {
        CareTask task = date.task();
        file.append(ContentLine.plain("BEGIN", "VEVENT"))
                .append(ContentLine.plain("UID", uid(date)))
                .append(ContentLine.plain("DTSTAMP", MOMENT.format(stamp)))
                .append(ContentLine.plain("DTSTART;VALUE=DATE", DAY.format(date.day())))
                .append(ContentLine.plain(
                        "DTEND;VALUE=DATE", DAY.format(date.day().plusDays(1))))
                .append(ContentLine.text(
                        "SUMMARY", book.say(Phrase.of("sheet.calendar.summary", book.say(task.what()), unitName))))
                .append(ContentLine.text("DESCRIPTION", description(task)))
                .append(ContentLine.plain("TRANSP", "TRANSPARENT"))
                .append(ContentLine.plain("END", "VEVENT"));
    }

    private String description(CareTask task) {
        List<String> lines = new ArrayList<>();
        lines.add(book.say(task.why()));
        lines.add(book.say(task.effect()));
        lines.add(book.say(task.foamAway()));
        for (Warning caution : task.cautions()) {
            lines.add(book.say(Phrase.of("sheet.severity." + caution.severity())) + ": " + book.say(caution));
        }
        return String.join("\n", lines);
    }

    private String uid(CareDate date) {
        String named = unitName + '\n' + date.task() + '\n' + date.day();
        return UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
