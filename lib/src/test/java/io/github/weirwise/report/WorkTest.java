package io.github.weirwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.Weirwise;
import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.table.ReadingTable;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.ZoneOffset;
import java.util.concurrent.CancellationException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What can take long stops when the thread that asked is interrupted, tells so in one way, and can be asked again. */
class WorkTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(RandomJournals.CREST_MM);

    private static void stops(ThrowingCallable question) throws Throwable {
        Thread.currentThread().interrupt();
        try {
            assertThatThrownBy(question)
                    .isInstanceOf(CancellationException.class)
                    .hasMessageStartingWith("stopped on request");
        } finally {
            assertThat(Thread.interrupted()).as("it stays interrupted").isTrue();
        }
        question.call();
    }

    @Test
    void adviceStops() throws Throwable {
        var journal = RandomJournals.of(1);
        var now = journal.entries().get(journal.entries().size() - 1).at();
        stops(() -> Weirwise.advise(UNIT, START, journal, now));
        stops(() -> JournalScore.of(UNIT, START, journal));
    }

    @Test
    void aTableStops() throws Throwable {
        stops(() -> new ReadingTable(ZoneOffset.UTC).read("time,level (mm)\n2026-05-04 08:30,12\n"));
    }

    @Test
    void aTankStops() throws Throwable {
        Scenario scenario = ScenarioJson.builtIn("leave-it");
        stops(() -> PracticeSession.begin(scenario, SessionOptions.DEFAULT));
    }

    @Test
    void theServiceSaysSoInADocument() {
        String request =
                "{\"version\": 2, \"operation\": \"import\", \"lines\": [\"time,level (mm)\", \"2026-05-04 08:30,12\"]}";
        Thread.currentThread().interrupt();
        String reply = WeirwiseJson.reply(request);
        assertThat(Thread.interrupted()).isTrue();
        assertThat(reply).contains("stopped on request").contains("ask again when there is time");
        assertThat(WeirwiseJson.reply(request)).doesNotContain("error");
    }
}
