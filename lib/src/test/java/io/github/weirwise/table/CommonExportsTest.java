package io.github.weirwise.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as spreadsheets and controllers of several countries save them (from memory of such exports). */
class CommonExportsTest {
    /** So little that a busy machine alone may need it; what grew with the square took many seconds. */
    private static final double TWO_SECONDS = 2e9;

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
                "2026-05-31 08:30:00.123 +0200 | 2026-05-31T06:30:00Z",
                "5/5/2026 12:00 PM | 2026-05-05T12:00:00Z"
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
                "31.05-2026"
            })
    void whatIsNoMomentIsTold(String written) {
        assertThatThrownBy(() -> table.readAll("time;level (mm)\n" + written + ";22\n"))
                .isInstanceOf(TableException.class)
                .hasMessageContaining("is not a time");
    }

    @Test
    void theOrderOfDaysIsToldByAnyDayOverTwelve() {
        String csv = "date,time,level (mm)\n5/1/2026,8:30 AM,22\n5/31/2026,8:30 PM,22\n";
        assertThat(table.readAll(csv).journal().all(Reading.class))
                .extracting(Reading::at)
                .containsExactly(Instant.parse("2026-05-01T08:30:00Z"), Instant.parse("2026-05-31T20:30:00Z"));
    }

    @Test
    void theOrderOfDaysIsAskedForWhenNothingTellsIt() {
        String rows = ",level (mm)\n5/1/2026,22\n5/2/2026,22\n";
        ImportedTable asked = table.readSound("date" + rows);
        assertThat(asked.asksForDateOrder()).isTrue();
        assertThat(asked.journal().entries()).isEmpty();
        assertThatThrownBy(() -> table.readAll("date" + rows))
                .isInstanceOfSatisfying(
                        TableException.class,
                        e -> assertThat(e.asksForDateOrder()).isTrue())
                .hasMessageContaining("date (dd/mm/yyyy)");
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
        ImportedTable read = table.readSound("date,level (mm)\n13/1/2026,22\n1/13/2026,22\n2/3/2026,22\n");
        assertThat(read.asksForDateOrder()).isTrue();
    }

    @Test
    void anHourThatTheClocksLeapOverIsTold() {
        ReadingTable berlin = new ReadingTable(ZoneId.of("Europe/Berlin"));
        ImportedTable read = berlin.readSound(
                "time,level (mm)\n2026-03-29 01:30,22\n2026-03-29 02:30,22\n2026-03-29 02:30+02:00,22\n"
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
                "22 | 0.200 | 0.2"
            })
    void theDecimalMarkIsToldByTheWholeTable(String level, String flow, double litresPerHour) {
        Reading reading = only("time;level (mm);flow (L/h)\n2026-05-04;" + level + ";" + flow + "\n");
        assertThat(reading.find(Observation.ReturnFlow.class).orElseThrow().litresPerHour())
                .isEqualTo(litresPerHour);
    }

    @Test
    void aMarkThatCouldBeEitherIsAskedFor() {
        for (String csv : List.of("time;flow (L/h)\n2026-05-04;2.200\n", "time,flow (L/h)\n2026-05-04,\"2,200\"\n")) {
            assertThatThrownBy(() -> table.readAll(csv))
                    .isInstanceOf(TableException.class)
                    .hasMessageContaining("thousands separator");
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
        ImportedTable read = table.readSound(
                "Lantern Quay; training tank 2\nnotes of May\n\ntime;level (mm)\n2026-05-04;22\n2026-05-05;high\n");
        assertThat(read.journal().entries()).hasSize(1);
        assertThat(read.rows()).isEqualTo(2);
        assertThat(read.faults()).extracting(TableFault::row).containsExactly(6);
    }

    @Test
    void severalColumnsOfNotesAllGiveNotes() {
        ImportedTable read = table.readAll("time,level (mm),note,remarks\n2026-05-04,22,wet foam,cup emptied\n");
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
        assertThatThrownBy(() -> table.readAll("time,salinity\n2026-05-04,1.025\n"))
                .isInstanceOf(TableException.class)
                .hasMessageContaining("specific gravity")
                .hasMessageContaining("sg 25/25");
    }

    @Test
    void unitsMayStandInARowOfTheirOwnBelowTheHeadings() {
        assertThat(only("Date,Level,Cup,Hours\n,mm,mL,h\n2026-05-04 08:30,12,180,24\n")
                        .observations())
                .containsExactly(new Observation.FunnelLevel(12), new Observation.CupVolume(180, 24, false));
        assertThat(only("Date;Level;Cup (ml);Hours\n;[cm];;\n2026-05-04 08:30;1,2;180;24\n")
                        .observations())
                .containsExactly(new Observation.FunnelLevel(12), new Observation.CupVolume(180, 24, false));
        assertThatThrownBy(() -> table.readAll("Date,Level\n,furlongs\n2026-05-04 08:30,12\n"))
                .hasMessageContaining("the unit is missing");
    }

    /** Each was slow once: 22, 21, 65 s for 200 kB to 1 MB. Sixteen times as long is far from two hundred and fifty-six times the work. */
    @Test
    void theWorkGrowsWithTheLengthAndNothingElse() {
        Map<String, IntFunction<String>> tables = new LinkedHashMap<>();
        tables.put(
                "brackets", n -> "time,level (mm)" + (",level" + "(".repeat(25 * n)).repeat(90) + "\n2026-05-04,22\n");
        tables.put("blanks", n -> "time,level (mm)" + (",level" + " ".repeat(25 * n) + "x").repeat(90) + "\n");
        tables.put("units", n -> "time,flow (L/h)\n" + ("2026-05-04,1 l" + " ".repeat(25 * n) + "x\n").repeat(100));
        tables.put("words", n -> "time,foam\n" + ("2026-05-04,a" + " ".repeat(25 * n) + "x\n").repeat(100));
        tables.put(
                "digits",
                n -> "time,level (mm)\n" + ("2".repeat(25 * n) + "Z," + "1.".repeat(10 * n) + "\n").repeat(60));
        tables.put("offsets", n -> "time,level (mm)\n" + ("+-00:".repeat(5 * n) + ",1\n").repeat(100));
        tables.put("faults", n -> "time,level (mm)\n" + "2026-05,1\n".repeat(100 * n));
        tables.put("lines", n -> "time,level (mm)" + "\n".repeat(500 * n));
        tables.put("separators", n -> "time,level (mm)\n" + (",".repeat(200) + "\n").repeat(12 * n));
        tables.forEach((name, made) -> {
            double sixteenth = leastWork(made.apply(24));
            assertThat(leastWork(made.apply(384))).as(name).isLessThan(Math.max(TWO_SECONDS, 64 * sixteenth));
        });
    }

    /** Nanoseconds, the least of some: what others do on the machine makes it only longer. */
    private double leastWork(String csv) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 6; i++) {
            long start = System.nanoTime();
            table.readSound(csv);
            least = Math.min(least, System.nanoTime() - start);
        }
        return least;
    }

    private static Instant first(ReadingTable table, String csv) {
        return table.readAll(csv).journal().all(Reading.class).get(0).at();
    }

    private Reading only(String csv) {
        List<Reading> readings = table.readAll(csv).journal().all(Reading.class);
        assertThat(readings).hasSize(1);
        return readings.get(0);
    }
}
