package io.github.weirwise.sheet;

import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareDate;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Warning;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * A care calendar as an iCalendar file (RFC 5545): one whole-day event a task that comes again on each of its days, with an
 * alarm at eight in the morning, what to do, why, what to expect of the foam and the cautions.
 *
 * <p>An event's UID follows from unit and task alone and its SEQUENCE from the time of the export, so that a later export moves
 * the event to its new days instead of leaving the old ones behind.
 *
 * @param book language of the words
 * @param unitName what the unit's keeper calls it; any characters
 * @param stamp when the file is made
 */
public record CareCalendarFile(PhraseBook book, String unitName, Instant stamp) {
    private static final Instant EPOCH = Instant.parse("2020-01-01T00:00:00Z");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

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
        Map<CareTask, List<LocalDate>> days = new EnumMap<>(CareTask.class);
        for (CareDate date : calendar.dates()) {
            days.computeIfAbsent(date.task(), each -> new ArrayList<>()).add(date.day());
        }
        days.forEach((task, all) -> append(file, task, all));
        return file.append(ContentLine.plain("END", "VCALENDAR")).toString();
    }

    private void append(StringBuilder file, CareTask task, List<LocalDate> days) {
        String summary = book.say(Phrase.of("sheet.calendar.summary", book.say(task.what()), unitName));
        LocalDate first = days.get(0);
        file.append(ContentLine.plain("BEGIN", "VEVENT"))
                .append(ContentLine.plain("UID", uid(task)))
                .append(ContentLine.plain("DTSTAMP", MOMENT.format(stamp)))
                .append(ContentLine.plain("SEQUENCE", Long.toString(sequence())))
                .append(ContentLine.plain("DTSTART;VALUE=DATE", DAY.format(first)))
                .append(ContentLine.plain("DTEND;VALUE=DATE", DAY.format(first.plusDays(1))));
        if (days.size() > 1) {
            file.append(again(days));
        }
        file.append(ContentLine.text("SUMMARY", summary))
                .append(ContentLine.text("DESCRIPTION", description(task)))
                .append(ContentLine.plain("TRANSP", "TRANSPARENT"))
                .append(ContentLine.plain("BEGIN", "VALARM"))
                .append(ContentLine.plain("ACTION", "DISPLAY"))
                .append(ContentLine.plain("TRIGGER;RELATED=START", "PT8H"))
                .append(ContentLine.text("DESCRIPTION", summary))
                .append(ContentLine.plain("END", "VALARM"))
                .append(ContentLine.plain("END", "VEVENT"));
    }

    /** A rule where the days are equally far apart, else each day. */
    private static String again(List<LocalDate> days) {
        long step = ChronoUnit.DAYS.between(days.get(0), days.get(1));
        boolean even = true;
        for (int i = 1; i < days.size(); i++) {
            even &= ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)) == step;
        }
        if (even && step > 0) {
            return ContentLine.plain("RRULE", "FREQ=DAILY;INTERVAL=" + step + ";COUNT=" + days.size());
        }
        String others = days.stream().skip(1).map(DAY::format).collect(Collectors.joining(","));
        return ContentLine.plain("RDATE;VALUE=DATE", others);
    }

    /** Minutes since 2020: grows from export to export and stays within what the standard's integers hold. */
    private long sequence() {
        return Math.max(
                0, Math.min(Integer.MAX_VALUE, Duration.between(EPOCH, stamp).toMinutes()));
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

    private String uid(CareTask task) {
        String named = unitName + '\n' + task;
        return UUID.nameUUIDFromBytes(named.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
