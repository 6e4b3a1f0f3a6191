package io.github.weirwise.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.FaultSheet;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Look;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.ProcessPoint;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.practice.SessionSummary;
import io.github.weirwise.practice.Trend;
import io.github.weirwise.practice.WholeSession;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.table.TableText;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The pages about practice hold what the session holds, parse, and cannot be broken by a name. */
class PracticeSheetsTest {
    private static final String HOSTILE = "</title><script>alert('x')</script>\"&\u0000\ud800";
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    static {
        // The library has no use for XML; only tests read pages with the JDK's parser.
        Module here = PracticeSheetsTest.class.getModule();
        here.addReads(ModuleLayer.boot().findModule("java.xml").orElseThrow());
    }

    private static PracticeSession session(Scenario scenario, String trainee, String reason) {
        PracticeSession start = pass(PracticeSession.begin(scenario, SessionOptions.DEFAULT.withTrainee(trainee)));
        PracticeSession seen = pass(start.look(Look.ROUND)).ownView(FaultSheet.certain(Cause.WEIR_TOO_LOW), reason);
        Prediction wetter = new Prediction(Trend.MORE, Trend.MORE, 1.5, 0.8);
        PracticeSession moved = pass(seen.act(new Act.MoveWeir(2), wetter, reason));
        PracticeSession later =
                pass(pass(moved.act(new Act.MoveWeir(2), wetter, reason + "!")).waitFor(1440));
        PracticeSession end = later;
        while (!end.over()) {
            end = pass(end.waitFor(2880));
        }
        return pass(end);
    }

    private static PracticeSession pass(PracticeSession session) {
        PracticeSession now = session;
        while (!now.questions().isEmpty()) {
            now = now.perform(new SessionStep.Answer(now.questions().get(0).name(), 0, HOSTILE.substring(0, 30)));
        }
        return now;
    }

    private static Scenario hostile() {
        String text = ScenarioJson.builtInText("first-steps")
                .replace("First steps: what the weir does", "<img src=x onerror=y> & ${title}")
                .replace("The weir stood about", "<b>The</b> weir stood about");
        return ScenarioJson.readScenario(text);
    }

    private static Document parsed(String page) throws Exception {
        String body = page.substring(page.indexOf("<html"));
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(body)));
    }

    @Test
    void theDebriefPageHoldsTheSessionAndParses() throws Exception {
        PracticeSession session = session(ScenarioJson.builtIn("slow-drying"), "Trainee 7", "too dry");
        Debrief debrief = Debrief.of(session);
        String page = new DebriefSheet(BOOK).of(debrief);
        Document document = parsed(page);
        assertThat(document.getElementsByTagName("svg").getLength())
                .isEqualTo(1 + debrief.decisions().size());
        assertThat(document.getElementsByTagName("h3").getLength())
                .isEqualTo(debrief.decisions().size());
        String text = document.getDocumentElement().getTextContent();
        assertThat(text)
                .contains("Trainee 7", session.scenario().teaches(), "too dry!")
                .contains(session.scenario().faults().get(0).words());
        debrief.points().forEach(each -> assertThat(text).contains(BOOK.say(each.reason())));
        debrief.outcome().goals().forEach(each -> assertThat(text).contains(BOOK.say(each.what())));
        debrief.decisions()
                .forEach(
                        each -> assertThat(text).contains(BOOK.say(each.advice().what())));
    }

    @Test
    void noNameBreaksAPage() throws Exception {
        PracticeSession session = session(hostile(), HOSTILE, HOSTILE);
        for (String page : List.of(
                new DebriefSheet(BOOK).of(Debrief.of(session)),
                new GroupSheet(BOOK).of(List.of(SessionSummary.of(session), SessionSummary.of(session)), ""))) {
            Document document = parsed(page);
            assertThat(document.getElementsByTagName("script").getLength()).isZero();
            assertThat(document.getElementsByTagName("img").getLength()).isZero();
            assertThat(document.getElementsByTagName("b").getLength()).isZero();
            assertThat(page).doesNotContain("\u0000").contains("default-src 'none'");
        }
    }

    @Test
    void theGroupPageStandsInTheOrderOfNamesWithOneChartEach() throws Exception {
        Scenario scenario = ScenarioJson.builtIn("first-steps");
        SessionSummary late = SessionSummary.of(session(scenario, "Zoe's shift", "dry"));
        SessionSummary early = SessionSummary.of(session(scenario, "Alpha shift", "dry"));
        SessionSummary idle = SessionSummary.of(PracticeSession.begin(scenario, SessionOptions.DEFAULT));
        String page = new GroupSheet(BOOK).of(List.of(late, early, idle), "");
        assertThat(parsed(page).getElementsByTagName("svg").getLength()).isEqualTo(3);
        assertThat(page.indexOf("Alpha shift")).isPositive().isLessThan(page.indexOf("Zoe&#39;s shift"));
    }

    @Test
    void theScoreSheetIsATableThatNoSpreadsheetRuns() {
        Scenario scenario = ScenarioJson.builtIn("first-steps");
        PracticeSession adviser = WholeSession.by(
                Hands.ADVISER,
                PracticeSession.begin(scenario, SessionOptions.DEFAULT.withTrainee("=cmd|'/c calc'!A1")));
        PracticeSession other = session(scenario, "He said \"no\", twice\nand left", "dry");
        String csv = ScoreSheet.csv(List.of(SessionSummary.of(adviser), SessionSummary.of(other)));
        List<List<String>> rows = TableText.cells(csv, ',');
        assertThat(rows).hasSize(3);
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
        assertThat(rows.get(0)).contains("hoursInBand", ProcessPoint.Habit.MADE_SAFE_FIRST.name());
        assertThat(rows.get(1).get(0)).isEqualTo("'=cmd|'/c calc'!A1");
        assertThat(rows.get(2).get(0)).isEqualTo("He said \"no\", twice\nand left");
        int band = rows.get(0).indexOf("hoursInBand");
        assertThat(Double.parseDouble(rows.get(1).get(band)))
                .isGreaterThan(0.9 * scenario.goals().lastsHours());
    }

    /** Where the list separator is a semicolon, a spreadsheet parts a quoted cell that does not stand first. */
    @Test
    void aFormulaInTheMiddleOfATextIsDefusedToo() {
        Scenario scenario = ScenarioJson.builtIn("first-steps");
        PracticeSession session =
                PracticeSession.begin(scenario, SessionOptions.DEFAULT.withTrainee("Ann;=1+1;@sum(1)\n-2\t +3, x-y"));
        String csv = ScoreSheet.csv(List.of(SessionSummary.of(session)));
        for (char separator : new char[] {',', ';'}) {
            assertThat(csv.replace("\"", "").split("[\r\n\t" + separator + "]"))
                    .allSatisfy(cell -> assertThat(cell.strip()).doesNotMatch("(?s)[=@+-].*[a-z1(].*"));
        }
        assertThat(csv).contains("x-y");
    }

    /** Parted at another separator, a cell can begin with quotation marks, and a spreadsheet drops them. */
    @Test
    void aFormulaBehindQuotationMarksOrInWideLettersIsDefusedToo() {
        Scenario scenario = ScenarioJson.builtIn("first-steps");
        for (String name : new String[] {"Ann;\"=1+1;", "\"=1+1", "\u00a0=1+1", "\uff1d1+1", "Ann;\" \uff20sum(1)"}) {
            PracticeSession session = PracticeSession.begin(scenario, SessionOptions.DEFAULT.withTrainee(name));
            String csv = ScoreSheet.csv(List.of(SessionSummary.of(session)));
            assertThat(csv).doesNotContainPattern("[;\n]\\s*\"*[\\s\u00a0]*[=\uff1d\uff20]");
            assertThat(csv).containsPattern("'[=\uff1d\uff20]");
        }
    }
}
