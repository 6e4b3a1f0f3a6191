package io.github.weirwise.table;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as spreadsheets and controllers of several countries save them (from memory of such exports). */
class CommonExportsTest {
    private final ReadingTable table = new ReadingTable(ZoneOffset.UTC);

    @Test
    void hoursNeedNoUnitBehindTheirName() {
        Reading reading = only("time,cup (mL),hours\n2026-05-04,200,24\n");
        assertThat(reading.find(Observation.CupVolume.class).orElseThrow().hours())
                .isEqualTo(24);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "31.05.2026 08:30 | 2026-05-31T08:30:00Z",
                "1.5.2026 8:30 | 2026-05-01T08:30:00Z",
                "01.05.26 08:30 | 2026-05-01T08:30:00Z",
                "5/31/2026 8:30 AM | 2026-05-31T08:30:00Z",
                "5/31/26 12:15 am | 2026-05-31T00:15:00Z",
                "31/05/2026, 8:30:07 p.m. | 2026-05-31T20:30:07Z",
                "2026/05/31 08:30 | 2026-05-31T08:30:00Z",
                "2026-05-31 08:30:00.123 +0200 | 2026-05-31T06:30:00.123Z",
                "5/5/2026 12:00 PM | 2026-05-05T12:00:00Z",
                "4 May 2026 | 2026-05-04T12:00:00Z",
                "4 January 2026 08:30 | 2026-01-04T08:30:00Z",
                "04-jan-26 8:30 | 2026-01-04T08:30:00Z",
                "'January 4, 2026 8:30 PM' | 2026-01-04T20:30:00Z",
                "'Sun, 4 Jan 2026 08:30:00 +0100' | 2026-01-04T07:30:00Z",
                "2026-05-04 08:30 UTC | 2026-05-04T08:30:00Z",
                "1767601800 | 2026-01-05T08:30:00Z"
            })
    void momentsComeAsPeopleWriteThem(String written, String instant) {
        assertThat(only("time;level (mm)\n" + written + ";22\n").at()).isEqualTo(Instant.parse(instant));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "13:30 PM",
                "2026-05-31 0:30 AM",
                "31.13.2026",
                "5/31/6",
                "26-05-31",
                "2026-05-31 8:7",
                "2026-05-31 08:30+99:99",
                "2026-05-31 08:30 noon",
                "31.05-2026",
                "Monday, 4 January 2026",
                "4 Janvier 2026",
                "31 Jun 2026",
                "17676018000",
                "46027.354"
            })
    void whatIsNoMomentIsTold(String written) {
        assertThat(told("time;level (mm)\n" + written + ";22\n")).contains("is not a time");
    }

    @Test
    void theOrderOfDaysIsToldByAnyDayOverTwelve() {
        String csv = "date,time,level (mm)\n5/1/2026,8:30 AM,22\n5/31/2026,8:30 PM,22\n";
        assertThat(whole(csv).journal().all(Reading.class))
                .extracting(Reading::at)
                .containsExactly(Instant.parse("2026-05-01T08:30:00Z"), Instant.parse("2026-05-31T20:30:00Z"));
    }

    @Test
    void theOrderOfDaysIsAskedForWhenNothingTellsIt() {
        String rows = ",level (mm)\n5/1/2026,22\n5/2/2026,22\n";
        ImportedTable asked = table.read("date" + rows);
        assertThat(asked.asksForDateOrder()).isTrue();
        assertThat(asked.journal().entries()).isEmpty();
        assertThat(told("date" + rows)).contains("date (dd/mm/yyyy)");
        assertThat(asked.orNothing().asksForDateOrder()).isTrue();
        Instant january = Instant.parse("2026-01-05T12:00:00Z");
        Instant may = Instant.parse("2026-05-01T12:00:00Z");
        assertThat(first(new ReadingTable(ZoneOffset.UTC, DateOrder.DAY_FIRST), "date" + rows))
                .isEqualTo(january);
        assertThat(first(new ReadingTable(ZoneOffset.UTC, DateOrder.MONTH_FIRST), "date" + rows))
                .isEqualTo(may);
        assertThat(first(table, "date (dd/mm/yyyy)" + rows)).isEqualTo(january);
        assertThat(first(table, "date (mm/dd/yyyy)" + rows)).isEqualTo(may);
    }

    @Test
    void daysThatContradictOneAnotherAreAskedFor() {
        ImportedTable read = table.read("date,level (mm)\n13/1/2026,22\n1/13/2026,22\n2/3/2026,22\n");
        assertThat(read.asksForDateOrder()).isTrue();
    }

    @Test
    void anHourThatTheClocksLeapOverIsTold() {
        ReadingTable berlin = new ReadingTable(ZoneId.of("Europe/Berlin"));
        ImportedTable read =
                berlin.read("time,level (mm)\n2026-03-29 01:30,22\n2026-03-29 02:30,22\n2026-03-29 02:30+02:00,22\n"
                        + "2026-10-25 02:30,22\n");
        assertThat(read.faults())
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.toString()).startsWith("Row 3").contains("Europe/Berlin"));
        assertThat(read.journal().all(Reading.class))
                .extracting(Reading::at)
                .as("the hour that comes twice in autumn is the earlier one")
                .contains(Instant.parse("2026-10-25T00:30:00Z"));
    }

    @Test
    void aHeadingMayNameUniversalTime() {
        ReadingTable berlin = new ReadingTable(ZoneId.of("Europe/Berlin"));
        assertThat(first(berlin, "time (UTC),level (mm)\n2026-05-04 08:30,22\n"))
                .isEqualTo(Instant.parse("2026-05-04T08:30:00Z"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "22,5 | 2.200 | 2200",
                "22.5 | 2.200 | 2.2",
                "22,5 | 2.200,5 | 2200.5",
                "22.5 | 2,200 | 2200",
                "22.5 | 2,200.5 | 2200.5",
                "22 | 1.234.567e-3 | 1234.567",
                "22 | 0.200 | 0.2",
                "22 | 2 200 | 2200",
                "22,5 | 12\u00a0200 | 12200",
                "22 | 2'200.5 | 2200.5"
            })
    void theDecimalMarkIsToldByTheWholeTable(String level, String flow, double litresPerHour) {
        Reading reading = only("time;level (mm);flow (L/h)\n2026-05-04;" + level + ";" + flow + "\n");
        assertThat(reading.find(Observation.ReturnFlow.class).orElseThrow().litresPerHour())
                .isEqualTo(litresPerHour);
    }

    @Test
    void aMarkThatCouldBeEitherIsAskedFor() {
        for (String csv : List.of("time;flow (L/h)\n2026-05-04;2.200\n", "time,flow (L/h)\n2026-05-04,\"2,200\"\n")) {
            assertThat(told(csv)).contains("thousands separator");
        }
        assertThat(only("time,flow (L/h)\n2026-05-04,2.200\n")
                        .find(Observation.ReturnFlow.class)
                        .orElseThrow()
                        .litresPerHour())
                .as("where the comma parts the cells a point is the decimal mark")
                .isEqualTo(2.2);
    }

    @Test
    void decimalCommasInQuotesComeInBetweenCommas() {
        Reading reading = only("time,level (mm),salinity (sg 25/25)\n2026-05-04,\"22,5\",\"1,026\"\n");
        assertThat(reading.find(Observation.FunnelLevel.class).orElseThrow().mm())
                .isEqualTo(22.5);
        assertThat(reading.find(Observation.Salinity.class).orElseThrow().practicalSalinity())
                .isBetween(34.0, 35.0);
    }

    @Test
    void titlesAboveTheHeadingsArePassedOver() {
        ImportedTable read = table.read(
                "Lantern Quay; training tank 2\nnotes of May\n\ntime;level (mm)\n2026-05-04;22\n2026-05-05;high\n");
        assertThat(read.journal().entries()).hasSize(1);
        assertThat(read.rows()).isEqualTo(2);
        assertThat(read.faults()).extracting(TableFault::row).containsExactly(6);
    }

    @Test
    void severalColumnsOfNotesAllGiveNotes() {
        ImportedTable read = whole("time,level (mm),note,remarks\n2026-05-04,22,wet foam,cup emptied\n");
        assertThat(read.journal().all(Note.class)).extracting(Note::text).containsExactly("wet foam", "cup emptied");
    }

    @ParameterizedTest
    @ValueSource(strings = {"n/a", "N/A", "-", "--", "\u2013", "#N/A", "na", "?"})
    void aCellThatSaysThatThereIsNothingIsEmpty(String nothing) {
        Reading reading = only("time,by,level (mm),air (L/h),foam,full,note\n2026-05-04," + nothing + "," + nothing
                + ",150," + nothing + "," + nothing + "," + nothing + "\n");
        assertThat(reading.observations()).containsExactly(new Observation.AirFlow(150));
        assertThat(reading.by()).isEmpty();
    }

    @Test
    void separatorsBehindTheLastColumnDoNoHarm() {
        assertThat(only("time,level (mm)\n2026-05-04,22,,,\n").observations()).hasSize(1);
    }

    @Test
    void aGravityUnderPlainSalinityIsAskedBack() {
        assertThat(told("time,salinity\n2026-05-04,1.025\n"))
                .contains("specific gravity")
                .contains("sg 25/25");
    }

    @Test
    void unitsMayStandInARowOfTheirOwnBelowTheHeadings() {
        assertThat(only("Date,Level,Cup,Hours\n,mm,mL,h\n2026-05-04 08:30,12,180,24\n")
                        .observations())
                .containsExactly(new Observation.FunnelLevel(12), new Observation.CupVolume(180, 24, false));
        assertThat(only("Date;Level;Cup (ml);Hours\n;[cm];;\n2026-05-04 08:30;1,2;180;24\n")
                        .observations())
                .containsExactly(new Observation.FunnelLevel(12), new Observation.CupVolume(180, 24, false));
        assertThat(told("Date,Level\n,furlongs\n2026-05-04 08:30,12\n")).contains("the unit is missing");
    }

    private static Instant first(ReadingTable table, String csv) {
        return table.read(csv).journal().all(Reading.class).get(0).at();
    }

    private Reading only(String csv) {
        List<Reading> readings = whole(csv).journal().all(Reading.class);
        assertThat(readings).hasSize(1);
        return readings.get(0);
    }

    /** All of a table that has no fault. */
    private ImportedTable whole(String csv) {
        ImportedTable read = table.read(csv);
        assertThat(read.faults()).isEmpty();
        return read;
    }

    /** Everything that is wrong with a table. */
    private String told(String csv) {
        return table.read(csv).faults().stream().map(TableFault::toString).collect(joining("\n"));
    }

    @Test
    void cellsMayBePartedByAnUprightStroke() {
        assertThat(only("time|level (mm)|note\n2026-05-04 08:30|22|a, b; c\n").observations())
                .containsExactly(new Observation.FunnelLevel(22));
    }

    @Test
    void unitsMayStandInTheCellsAlone() {
        assertThat(only("time,level,cup,hours,temp\n2026-05-04 08:30,2.2 cm,180 ml,24 h,77 F\n")
                        .observations())
                .containsExactly(
                        new Observation.FunnelLevel(22),
                        new Observation.WaterTemperature(25),
                        new Observation.CupVolume(180, 24, false));
        assertThat(told("time,level\n2026-05-04 08:30,22 apples\n")).contains("the unit is missing");
    }

    /** What is longer than any number, day or unit is not looked into; so no cell costs more than its letters. */
    @ParameterizedTest
    @ValueSource(strings = {"2", "1.", "1,", "+-00:", "( ", "1 ", "e9", "Jan "})
    void aLongCellIsGivenUpByItsLength(String piece) {
        String cell = "1" + piece.repeat(9000 / piece.length());
        String told = told("time;level (mm);flow (L/h)\n" + cell + ";22;150\n2026-05-04;" + cell + ";150\n"
                + "2026-05-04;22;150 L/h" + piece.repeat(9000 / piece.length()) + "x\n");
        assertThat(told).contains("Row 2").contains("Row 3").contains("Row 4");
    }
}
