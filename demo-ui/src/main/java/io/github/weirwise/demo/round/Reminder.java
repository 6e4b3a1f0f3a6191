package io.github.weirwise.demo.round;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The next visit as a text and as a calendar file after RFC 5545.
 *
 * @param unit name of the unit
 * @param now when it is written
 * @param until when to look again
 * @param flood when to look whether the cup runs over
 * @param untilWords the same in words
 * @param floodWords the same in words
 * @param expectedWords what to expect then
 */
record Reminder(
        String unit,
        Instant now,
        Instant until,
        Optional<Instant> flood,
        String untilWords,
        String floodWords,
        String expectedWords) {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final int MOST_OCTETS = 74;

    /** Plain lines. */
    String text() {
        List<String> lines = new ArrayList<>(List.of(unit, untilWords));
        lines.addAll(floodWords.isEmpty() ? List.of(expectedWords) : List.of(floodWords, expectedWords));
        return String.join("\n", lines);
    }

    /** An event for each look, with an alarm at its time. */
    String calendar() {
        List<String> lines =
                new ArrayList<>(List.of("BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Weirwise//round//EN"));
        flood.ifPresent(at -> event(lines, "flood", at, floodWords));
        event(lines, "look", until, untilWords);
        lines.add("END:VCALENDAR");
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(folded(line)).append("\r\n"));
        return text.toString();
    }

    private void event(List<String> lines, String kind, Instant at, String words) {
        lines.addAll(List.of(
                "BEGIN:VEVENT",
                "UID:" + kind + "-" + STAMP.format(at) + "-" + Integer.toHexString(unit.hashCode()) + "@weirwise",
                "DTSTAMP:" + STAMP.format(now),
                "DTSTART:" + STAMP.format(at),
                "DURATION:PT15M",
                "SUMMARY:" + escaped(unit + ": " + words),
                "DESCRIPTION:" + escaped(expectedWords),
                "BEGIN:VALARM",
                "ACTION:DISPLAY",
                "TRIGGER:PT0S",
                "DESCRIPTION:" + escaped(words),
                "END:VALARM",
                "END:VEVENT"));
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\n", "\\n");
    }

    /** No line is longer than 75 octets, and no letter is cut in two. */
    private static String folded(String line) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int letter : line.codePoints().toArray()) {
            String one = Character.toString(letter);
            int size = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(one);
            octets += size;
        }
        return folded.toString();
    }
}
