package io.github.weirwise.table;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.table.TableDamage.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingTableTest {
    private final ReadingTable table = new ReadingTable(ZoneOffset.UTC);

    @Test
    void columnsAreFoundByNameInAnyOrder() {
        Reading reading = only("note,temp [F],LEVEL (in),time,flow gph\n,77,1,2026-05-04 08:30,581.18\n");
        assertThat(reading.at()).isEqualTo(Instant.parse("2026-05-04T08:30:00Z"));
        assertThat(reading.find(Observation.FunnelLevel.class).orElseThrow().mm())
                .isCloseTo(25.4, within(1e-9));
        assertThat(reading.find(Observation.WaterTemperature.class)
                        .orElseThrow()
                        .celsius())
                .isCloseTo(25, within(1e-9));
        assertThat(reading.find(Observation.ReturnFlow.class).orElseThrow().litresPerHour())
                .isCloseTo(2200, within(0.1));
    }

    /** Exact factors of NIST SP 811, appendix B. */
    @ParameterizedTest
    @CsvSource({
        "head (in), 1, 25.4",
        "head (cm), 1, 10",
        "headMm, 21.5, 21.5",
        "head_over_crest_mm, 21.5, 21.5",
        "'head, mm', 21.5, 21.5",
        "HEAD OVER CREST inches, 2, 50.8"
    })
    void lengthsComeInMillimetres(String heading, String written, double mm) {
        Reading reading = only("time,\"" + heading + "\"\n2026-05-04," + written + "\n");
        assertThat(reading.find(Observation.HeadOverCrest.class).orElseThrow().mm())
                .isCloseTo(mm, within(1e-9));
    }

    /** Exact factors of NIST SP 811, appendix B. */
    @ParameterizedTest
    @CsvSource({
        "cup (fl oz), 1, 29.5735295625",
        "cup (gal), 1, 3785.411784",
        "skimmate litres, 0.25, 250",
        "skimmateMl, 250, 250"
    })
    void amountsComeInMillilitres(String heading, String written, double ml) {
        Reading reading = only("time," + heading + ",hours (days)\n2026-05-04," + written + ",2\n");
        Observation.CupVolume cup = reading.find(Observation.CupVolume.class).orElseThrow();
        assertThat(cup.ml()).isCloseTo(ml, within(1e-9 * ml));
        assertThat(cup.hours()).isEqualTo(48);
    }

    @Test
    void aRateNeedsNoHours() {
        Reading reading = only("time,skimmate (mL/day)\n2026-05-04,240\n");
        assertThat(reading.find(Observation.CupVolume.class).orElseThrow().mlPerDay())
                .isCloseTo(240, within(1e-9));
    }

    /** 1.0264 at 25/25 is sea water of 35 by EOS-80; the same number means another salinity on another scale. */
    @Test
    void aSpecificGravityMustSayItsScale() {
        Reading reading = only("time,salinity (sg 25/25)\n2026-05-04,1.0264\n");
        assertThat(reading.find(Observation.Salinity.class).orElseThrow().practicalSalinity())
                .isCloseTo(35, within(0.1));
        assertThat(told("time,specific gravity\n2026-05-04,1.0264\n")).contains("sg 25/25");
    }

    @Test
    void wordsAreTakenAsPeopleWriteThem() {
        Reading reading = only("time,colour,foam look,by\n2026-05-04,Dark tea,low in neck,trainee 2\n");
        assertThat(reading.find(Observation.Darkness.class).orElseThrow().word())
                .isEqualTo(DarknessWord.DARK_TEA);
        assertThat(reading.find(Observation.FoamLook.class).orElseThrow().look())
                .isEqualTo(FoamLookWord.LOW_IN_NECK);
        assertThat(reading.by()).isEqualTo("trainee 2");
    }

    @Test
    void theWeirMovesWhereItsNumberChanges() {
        ImportedTable read = whole("time,weir (mm)\n2026-05-01,210\n2026-05-02,210\n2026-05-04,205\n2026-05-03,210\n");
        assertThat(read.journal().all(WeirMove.class))
                .extracting(WeirMove::toCrestMm)
                .containsExactly(210.0, 205.0);
    }

    @Test
    void notesWithSeparatorsQuotesAndLineEndsComeBackAsTheyWere() {
        ImportedTable read = whole("time,note\r\n2026-05-04,\"a, \"\"b\"\";\r\nc\"\r\n");
        assertThat(read.journal().all(Note.class)).extracting(Note::text).containsExactly("a, \"b\";\r\nc");
    }

    @Test
    void decimalCommasAreReadBetweenSemicolons() {
        Reading reading = only("time;level (mm)\n2026-05-04 08:00;22,5\n");
        assertThat(reading.find(Observation.FunnelLevel.class).orElseThrow().mm())
                .isEqualTo(22.5);
    }

    @Test
    void aUnitInTheCellBeatsTheHeading() {
        Reading reading = only("time,level (mm)\n2026-05-04,1 in\n");
        assertThat(reading.find(Observation.FunnelLevel.class).orElseThrow().mm())
                .isCloseTo(25.4, within(1e-9));
    }

    @Test
    void dayAndClockMayStandInTwoColumns() {
        ReadingTable berlin = new ReadingTable(ZoneId.of("Europe/Berlin"));
        ImportedTable read = berlin.read("date,time,level (mm)\n2026-05-04,8:05,22\n2026-05-05,,22\n");
        assertThat(read.journal().all(Reading.class))
                .extracting(Reading::at)
                .containsExactly(Instant.parse("2026-05-04T06:05:00Z"), Instant.parse("2026-05-05T10:00:00Z"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2026-05-04T08:30:00Z", "2026-05-04 10:30+02:00", "2026-05-04 08:30:00", "2026-05-04T08:30"})
    void momentsMayHaveSecondsAndOffsets(String written) {
        assertThat(only("time,level (mm)\n" + written + ",22\n").at()).isEqualTo(Instant.parse("2026-05-04T08:30:00Z"));
    }

    @Test
    void aColumnThatMeansNothingIsNamedAndLeftAlone() {
        ImportedTable read = whole("time,level (mm),nitrate\n2026-05-04,22,5\n");
        assertThat(read.ignoredHeadings()).containsExactly("nitrate");
    }

    @Test
    void aFaultTellsRowColumnHeadingAndWhatToTry() {
        ImportedTable read = table.read("time,level (mm)\n2026-05-04,22\n2026-05-05,high\n2026-05-06,99999\n");
        assertThat(read.faultCount()).isEqualTo(2);
        TableFault first = read.faults().get(0);
        assertThat(first.row()).isEqualTo(3);
        assertThat(first.letters()).isEqualTo("B");
        assertThat(first.toString()).startsWith("Row 3, column B (level (mm)): \"high\" is not a number");
        assertThat(read.faults().get(1).toString()).contains("99999", "-300", "500");
    }

    @Test
    void eachOfSeveralFaultsInARowIsToldInItsOwnColumn() {
        ImportedTable read = table.read("time,cup (mL),hours (h),full,colour\n2026-05-04,200,0,nearly,mauve\n");
        assertThat(read.faults()).extracting(TableFault::letters).containsExactly("C", "D", "E");
        assertThat(read.journal().entries()).isEmpty();
    }

    @Test
    void nothingIsTakenOverWhileThereIsAFaultIfThatIsWanted() {
        ImportedTable sound = table.read("time,level (mm)\n2026-05-04,22\n2026-05-05,high\n");
        assertThat(sound.journal().entries()).hasSize(1);
        assertThat(sound.rows()).isEqualTo(2);
        assertThat(sound.faults()).hasSize(1);
        assertThat(sound.orNothing().journal().entries()).isEmpty();
        assertThat(sound.orNothing().faults()).isEqualTo(sound.faults());
    }

    static Stream<TableDamage> damages() {
        return TableDamage.all().stream();
    }

    @Test
    void thereAreFiftyKindsOfDamage() {
        assertThat(TableDamage.all()).hasSize(50).extracting(TableDamage::name).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("damages")
    void damageIsToldWhereItIsAndNothingElseIsLost(TableDamage damage) {
        Random random = new Random(damage.name().hashCode());
        int rows = 120;
        List<List<String>> cells = TableDamage.sound(rows, 5);
        int harmed = 1 + random.nextInt(rows);
        String csv = damage.harm().apply(cells, harmed, random);
        if (damage.outcome() == Outcome.TABLE) {
            assertThat(table.read(csv).faults()).hasSize(1);
            assertThat(table.read(csv).journal().entries()).isEmpty();
            return;
        }
        ImportedTable read = table.read(csv);
        List<Integer> rowsNamed =
                read.faults().stream().map(TableFault::row).distinct().toList();
        boolean row = damage.outcome() == Outcome.ROW;
        assertThat(rowsNamed).isEqualTo(row ? List.of(harmed + 1) : List.of());
        assertThat(read.journal().all(Reading.class)).hasSize(row ? rows - 1 : rows);
    }

    @Test
    void randomlyCutAndMixedTablesGiveOneKindOfError() {
        Random random = new Random(99);
        String sound = TableDamage.csv(TableDamage.sound(12, 1), ",", "\r\n");
        String marks = ",;\t\"\r\n\0 -+.eE0123456789:/()[]\u00b0\ufeff\ud83d#NaN";
        for (int round = 0; round < 2_000; round++) {
            StringBuilder text = new StringBuilder(sound);
            for (int i = 0; i < 1 + random.nextInt(12); i++) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(4)) {
                    case 0 -> text.setCharAt(at, marks.charAt(random.nextInt(marks.length())));
                    case 1 -> text.insert(at, marks.charAt(random.nextInt(marks.length())));
                    case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(9)));
                    default -> text.insert(at, text.substring(at, Math.min(text.length(), at + 30)));
                }
            }
            ImportedTable read = table.read(text.toString());
            assertThat(read.faultCount())
                    .as(text.toString())
                    .isGreaterThanOrEqualTo(read.faults().size());
        }
    }

    private Reading only(String csv) {
        List<Reading> readings = whole(csv).journal().all(Reading.class);
        assertThat(readings).hasSize(1);
        return readings.get(0);
    }

    /** 25 characters outside the basic plane are 50 halves: more than the message shows by halves, less by characters. */
    @Test
    void aCellOfRareCharactersIsShownInItsError() {
        String cell = "\ud83d\udc1f".repeat(25);
        ImportedTable read = new ReadingTable(java.time.ZoneOffset.UTC)
                .read("time,foam\n2026-03-01 08:00," + cell + "\n2026-03-02 08:00,creamy\n");
        assertThat(read.faultCount()).isEqualTo(1);
        assertThat(read.faults().get(0).toString()).contains(cell);
    }

    @Test
    void thePageOfLimitsNamesTheLimitsOfTables() throws IOException {
        String page = Files.readString(Path.of(System.getProperty("basedir", ""))
                .toAbsolutePath()
                .getParent()
                .resolve("docs/limits.md"));
        assertThat(page)
                .contains("| " + ReadingTable.MOST_CHARACTERS + " |")
                .contains("rows and columns of such a table | " + CsvRows.MOST_ROWS + "; " + CsvRows.MOST_COLUMNS)
                .contains("characters in one of its cells | " + CsvRows.LONGEST_CELL)
                .contains("listed of such a table | " + ImportedTable.MOST_LISTED);
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
}
