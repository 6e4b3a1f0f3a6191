package io.github.weirwise.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import biweekly.util.com.google.ical.compat.javautil.DateIterator;
import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareDate;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.PhraseBook;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar export, read back by a parser that is not ours, and against RFC 5545. */
class CareCalendarFileTest {
    private static final Instant NOW = Instant.parse("2026-03-29T00:30:00Z");
    private final CareCalendar calendar = CareCalendar.of(
            CarePlan.of(Journal.EMPTY, NOW), ZoneOffset.UTC, 92, EnumSet.complementOf(EnumSet.of(CareTask.LOOK)));

    @Test
    void theReferenceParserFindsNothingToCriticise() {
        ICalendar read = parse(file("Lantern Quay middle"));
        assertThat(read.validate(ICalVersion.V2_0).getWarnings()).isEmpty();
        assertThat(read.getVersion()).isEqualTo(ICalVersion.V2_0);
    }

    @Test
    void everyTaskIsAnEventThatComesAgainOnAllOfItsDays() {
        ICalendar read = parse(file("Lantern Quay middle"));
        assertThat(read.getEvents()).hasSize(tasks(calendar).size());
        for (VEvent event : read.getEvents()) {
            CareTask task = tasks(calendar).stream()
                    .filter(each -> event.getSummary()
                            .getValue()
                            .equals(PhraseBook.ENGLISH_METRIC.say(each.what()) + " (Lantern Quay middle)"))
                    .findFirst()
                    .orElseThrow();
            List<String> wanted = calendar.dates().stream()
                    .filter(date -> date.task() == task)
                    .map(date -> date.day().toString())
                    .toList();
            assertThat(days(event)).as("%s", task).isEqualTo(wanted);
            assertThat(event.getDateStart().getValue().hasTime()).isFalse();
            assertThat(event.getDescription().getValue()).contains(PhraseBook.ENGLISH_METRIC.say(task.why()));
            assertThat(event.getDateTimeStamp().getValue()).isEqualTo(NOW);
            assertThat(event.getAlarms()).hasSize(1);
        }
    }

    @Test
    void daysThatShiftLeaveNoOldEventBehind() {
        CareCalendar shifted = CareCalendar.of(
                CarePlan.of(Journal.EMPTY, NOW.plusSeconds(5 * 86_400)),
                ZoneOffset.UTC,
                92,
                EnumSet.complementOf(EnumSet.of(CareTask.LOOK)));
        String later = new CareCalendarFile(
                        PhraseBook.ENGLISH_METRIC, "Lantern Quay middle", NOW.plusSeconds(5 * 86_400))
                .of(shifted);
        assertThat(uids(later)).isEqualTo(uids(file("Lantern Quay middle")));
        assertThat(parse(later).getEvents().get(0).getSequence().getValue())
                .isGreaterThan(parse(file("Lantern Quay middle"))
                        .getEvents()
                        .get(0)
                        .getSequence()
                        .getValue());
    }

    private static List<String> days(VEvent event) {
        List<String> days = new ArrayList<>();
        DateIterator each = event.getDateIterator(TimeZone.getTimeZone("UTC"));
        while (each.hasNext()) {
            days.add(each.next().toInstant().toString().substring(0, 10));
        }
        return days;
    }

    private static Set<CareTask> tasks(CareCalendar calendar) {
        return calendar.dates().stream().map(CareDate::task).collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "comma, semicolon; backslash\\ colon: quote\"",
                "two\nlines\r\nand\rthree",
                "\\n is not a line end",
                "BEGIN:VEVENT\r\nUID:forged\r\nEND:VEVENT",
                "Becken im Sch\u00fcler\u00fcbungsraum \u6c34\u69fd \ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20\ud83d\udc20",
                "a very long name that goes on and on so that the summary has to be folded more than once, as the standard asks"
            })
    void aHostileNameComesBackAsItWas(String name) {
        ICalendar read = parse(file(name));
        assertThat(read.getEvents()).hasSize(tasks(calendar).size());
        String expected = name.replace("\r\n", "\n").replace('\r', '\n');
        assertThat(read.getEvents().get(0).getSummary().getValue().replace("\r\n", "\n"))
                .endsWith("(" + expected + ")");
    }

    @Test
    void controlCharactersAndHalfPairsAreLeftOut() {
        ICalendar read = parse(file("a\u0000b\u0007c\ud83dd\u007fe"));
        assertThat(read.getEvents().get(0).getSummary().getValue()).endsWith("(abcde)");
    }

    /** RFC 5545, 3.1: lines end with CR LF and hold at most 75 octets without it. */
    @Test
    void noLineIsLongerThan75OctetsAndNoCharacterIsCut() {
        CareCalendar one =
                new CareCalendar(calendar.firstDay(), List.of(calendar.dates().get(0)));
        Random random = new Random(7);
        for (int round = 0; round < 60; round++) {
            StringBuilder name = new StringBuilder("x");
            for (int i = 0; i < 150; i++) {
                int c = 0x20 + random.nextInt(random.nextInt(4) == 0 ? 0x1f000 : 0x500);
                if (c < 0x7f || c > 0xa0 && (c < 0xd800 || c > 0xdfff) && Character.isDefined(c)) {
                    name.appendCodePoint(c);
                }
            }
            String file = new CareCalendarFile(PhraseBook.ENGLISH_METRIC, name.toString(), NOW).of(one);
            for (String line : file.split("\r\n")) {
                assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
                assertThat(line).doesNotContain("\r", "\n", "\ufffd");
            }
            assertThat(parse(file).getEvents().get(0).getSummary().getValue()).endsWith("(" + name + ")");
        }
    }

    @Test
    void everyEventHasItsOwnUidAndALaterExportKeepsIt() {
        List<String> first = uids(file("Lantern Quay middle"));
        assertThat(first).doesNotHaveDuplicates();
        String later = new CareCalendarFile(PhraseBook.ENGLISH_METRIC, "Lantern Quay middle", NOW.plusSeconds(86400))
                .of(calendar);
        assertThat(uids(later)).isEqualTo(first);
        assertThat(uids(file("Lantern Quay large"))).doesNotContainAnyElementsOf(first);
    }

    @Test
    void anEmptyCalendarIsStillAFile() {
        CareCalendar none = new CareCalendar(calendar.firstDay(), List.of());
        String file = new CareCalendarFile(PhraseBook.ENGLISH_METRIC, "x", NOW).of(none);
        assertThat(parse(file).getEvents()).isEmpty();
    }

    private String file(String name) {
        return new CareCalendarFile(PhraseBook.ENGLISH_METRIC, name, NOW).of(calendar);
    }

    private static List<String> uids(String file) {
        List<String> uids = new ArrayList<>();
        parse(file).getEvents().forEach(event -> uids.add(event.getUid().getValue()));
        return uids;
    }

    private static ICalendar parse(String file) {
        List<List<ParseWarning>> warnings = new ArrayList<>();
        List<ICalendar> all = Biweekly.parse(file).warnings(warnings).all();
        assertThat(all).hasSize(1);
        assertThat(warnings.get(0)).isEmpty();
        return all.get(0);
    }
}
