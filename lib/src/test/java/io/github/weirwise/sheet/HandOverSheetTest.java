package io.github.weirwise.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.AdviceGiven.Followed;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation.CupVolume;
import io.github.weirwise.reading.Observation.FunnelLevel;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HandOverSheetTest {
    private static final Instant NOW = Instant.parse("2026-05-04T08:00:00Z");

    static {
        // The library has no use for XML; only this test reads the page with the JDK's parser.
        Module here = HandOverSheetTest.class.getModule();
        here.addReads(ModuleLayer.boot().findModule("java.xml").orElseThrow());
    }

    private final HandOverSheet sheet = new HandOverSheet(PhraseBook.ENGLISH_METRIC, ZoneOffset.UTC);

    @Test
    void itHoldsUnitSettingsChartDueAndCautions() throws Exception {
        HandOver over = HandOver.of(
                FirstRoundUnits.middle(),
                FirstRoundUnits.middle().ratedSettings(205.4),
                SampleJournal.twoMonths(NOW),
                Optional.of(FitCheck.of(LanternQuaySites.trainingTank())),
                NOW);
        Document page = parse(sheet.of(over));
        String words = page.getDocumentElement().getTextContent();
        assertThat(words)
                .contains("First round middle", "205 mm", "Weir set to", "Adviser said:", "Serviced: neck and cup")
                .contains("overdue", "Unplug before hands go in", "veterinarian", "20 L");
        assertThat(page.getElementsByTagName("svg").getLength()).isEqualTo(1);
        assertThat(page.getElementsByTagName("circle").getLength()).isGreaterThan(20);
    }

    @Test
    void itHasNoScriptAndLoadsNothing() throws Exception {
        String page = sheet.of(over(FirstRoundUnits.middle(), SampleJournal.twoMonths(NOW)));
        assertThat(page)
                .doesNotContainIgnoringCase("<script")
                .doesNotContain("http:", "https:", "src=", "url(", "@import");
        assertThat(page).contains("default-src 'none'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "</title></head><img src=x onerror=alert(1)>",
                "\" onload=\"alert(1)",
                "' & <b> &amp; {0} '{1}'",
                "]]><!-- --!>",
                "\u202eright to left \u0000\u0008\ud83d"
            })
    void hostileNamesAndNotesStayWords(String hostile) throws Exception {
        SkimmerUnit unit = named(hostile);
        Journal journal = SampleJournal.twoMonths(NOW)
                .with(new Note(NOW, hostile))
                .with(new AdviceGiven(NOW, hostile, Followed.OPEN));
        Document page = parse(sheet.of(over(unit, journal)));
        Document plain = parse(sheet.of(over(
                named("plain"),
                SampleJournal.twoMonths(NOW)
                        .with(new Note(NOW, "plain"))
                        .with(new AdviceGiven(NOW, "plain", Followed.OPEN)))));
        assertThat(elements(page)).isEqualTo(elements(plain));
        String expected = hostile.replaceAll("[\u0000\u0008\ud83d]", "\ufffd");
        assertThat(page.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(expected);
        assertThat(page.getElementsByTagName("title").item(0).getTextContent()).isEqualTo(expected);
    }

    @Test
    void randomNamesNeverBreakThePage() throws Exception {
        Random random = new Random(11);
        for (int round = 0; round < 100; round++) {
            StringBuilder name = new StringBuilder("x");
            for (int i = 0; i < 40; i++) {
                name.append((char) random.nextInt(random.nextBoolean() ? 128 : 65536));
            }
            parse(sheet.of(over(named(name.toString()), Journal.EMPTY)));
        }
    }

    @Test
    void anEmptyJournalMakesASheetWithoutAChart() throws Exception {
        Document page = parse(sheet.of(over(FirstRoundUnits.small(), Journal.EMPTY)));
        assertThat(page.getElementsByTagName("svg").getLength()).isZero();
        assertThat(page.getDocumentElement().getTextContent()).contains("there is no chart", "The journal is empty");
    }

    @Test
    void aLongHistoryIsCutToItsNewestLines() throws Exception {
        Journal journal = Journal.EMPTY;
        for (int i = 0; i < 60; i++) {
            journal = journal.with(new Note(NOW.minus(Duration.ofHours(60 - i)), "note " + i + " ".repeat(50) + "x"));
        }
        String words = parse(sheet.of(over(FirstRoundUnits.small(), journal)))
                .getDocumentElement()
                .getTextContent();
        assertThat(words)
                .contains("Older, in the journal file: 44 entries", "note 59", "note 44")
                .doesNotContain("note 43");
    }

    @Test
    void anAdviceThatWasWrittenAgainShowsItsLaterLine() throws Exception {
        Journal journal = Journal.of(
                new AdviceGiven(NOW, "Wait until evening", Followed.OPEN),
                new AdviceGiven(NOW, "Wait until evening", Followed.YES));
        String words = parse(sheet.of(over(FirstRoundUnits.small(), journal)))
                .getDocumentElement()
                .getTextContent();
        assertThat(words).contains("Wait until evening (done)").doesNotContain("not known if");
    }

    @Test
    void tasksThatAreKeptAsNotesReadAsTasks() throws Exception {
        Journal journal = Journal.of(new TaskDone(NOW, CareTask.TEST_SWITCH).asNote());
        assertThat(sheet.of(over(FirstRoundUnits.small(), journal)))
                .contains("Done: Press the test button")
                .doesNotContain("TEST_SWITCH");
    }

    @Test
    void itSpeaksInInchesToo() {
        HandOverSheet us = new HandOverSheet(new PhraseBook(Locale.US, UnitSystem.US_CUSTOMARY), ZoneOffset.UTC);
        assertThat(us.of(over(FirstRoundUnits.middle(), SampleJournal.twoMonths(NOW))))
                .contains("8.07 in", "fl oz/day")
                .doesNotContain(" mm<", " mL");
    }

    @Test
    void everyDotLiesInsideTheChartWhateverIsInTheJournal() throws Exception {
        Random random = new Random(3);
        for (int round = 0; round < 100; round++) {
            Journal journal = Journal.EMPTY;
            for (int i = 0; i < 1 + random.nextInt(12); i++) {
                Instant at = NOW.minusSeconds((long) (random.nextDouble() * 80 * 86400));
                journal = random.nextInt(3) == 0
                        ? journal.with(new WeirMove(at, 1 + 1999 * random.nextDouble(), false))
                        : journal.with(Reading.of(
                                at,
                                new CupVolume(Math.pow(10, 5 * random.nextDouble()) - 1, 24, random.nextBoolean()),
                                new FunnelLevel(10)));
            }
            NodeList dots =
                    parse(sheet.of(over(FirstRoundUnits.large(), journal))).getElementsByTagName("circle");
            for (int i = 0; i < dots.getLength(); i++) {
                double x = number(dots.item(i), "cx");
                double y = number(dots.item(i), "cy");
                assertThat(x).isBetween(PanelChart.LEFT - 0.1, PanelChart.RIGHT + 0.1);
                assertThat(y).isBetween(PanelChart.TOP - 0.1, PanelChart.TOP + TuningChart.AMOUNT_HEIGHT + 0.1);
            }
        }
    }

    private static HandOver over(SkimmerUnit unit, Journal journal) {
        Settings settings = unit.ratedSettings(205);
        return HandOver.of(unit, settings, journal, Optional.empty(), NOW);
    }

    private static SkimmerUnit named(String name) {
        SkimmerUnit unit = FirstRoundUnits.middle();
        return new SkimmerUnit(
                name,
                unit.columns(),
                unit.column(),
                unit.weir(),
                unit.cupMl(),
                unit.cupDrainLitresPerHour(),
                unit.ratedFlowLitresPerHour(),
                unit.ratedAirLitresPerHour(),
                unit.traits(),
                unit.target(),
                unit.layout());
    }

    private static double number(Node node, String attribute) {
        return Double.parseDouble(node.getAttributes().getNamedItem(attribute).getNodeValue());
    }

    private static List<String> elements(Document page) {
        List<String> names = new ArrayList<>();
        NodeList all = page.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            names.add(all.item(i).getNodeName() + all.item(i).getAttributes().getLength());
        }
        return names;
    }

    /** The page is also well-formed XML, so the JDK's parser can judge it. */
    private static Document parse(String page) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }
}
