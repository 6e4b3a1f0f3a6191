package io.github.weirwise.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
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
    void everyDateComesBackOnItsDayWithItsWords() {
        ICalendar read = parse(file("Lantern Quay middle"));
        assertThat(read.getEvents()).hasSameSizeAs(calendar.dates());
        for (int i = 0; i < calendar.dates().size(); i++) {
            CareDate date = calendar.dates().get(i);
            VEvent event = read.getEvents().get(i);
            assertThat(event.getDateStart().getValue().getRawComponents().toString())
                    .startsWith(date.day().toString().replace("-", "") + "T000000");
            assertThat(event.getDateStart().getValue().hasTime()).isFalse();
            assertThat(event.getSummary().getValue())
                    .isEqualTo(PhraseBook.ENGLISH_METRIC.say(date.task().what()) + " (Lantern Quay middle)");
            assertThat(event.getDescription().getValue())
                    .contains(PhraseBook.ENGLISH_METRIC.say(date.task().why()));
            assertThat(event.getDateTimeStamp().getValue()).isEqualTo(NOW);
        }
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
        assertThat(read.getEvents()).hasSameSizeAs(calendar.dates());
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
