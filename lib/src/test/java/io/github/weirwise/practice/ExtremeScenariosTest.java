package io.github.weirwise.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.report.CountedWork;
import io.github.weirwise.tank.TankLimitException;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** Scenarios that are legal and extreme: played, or refused with the hour, and in bounded time. */
class ExtremeScenariosTest {
    private static final int SCENARIOS = 120;
    private static final long MOST_MILLIS = 30_000;

    @Test
    void everyLegalScenarioIsPlayedOrRefusedWithItsHour() {
        int played = 0;
        for (int seed = 0; seed < SCENARIOS; seed++) {
            Scenario made = new RandomScenario(seed).next(3);
            Scenario read = ScenarioJson.readScenario(ScenarioJson.writeScenario(made));
            try {
                PracticeSession session = WholeSession.by(
                        Hands.NOTHING, PracticeSession.begin(read, SessionOptions.DEFAULT.withSeed(seed)));
                played += session.over() ? 1 : 0;
            } catch (TankLimitException e) {
                assertThat(e.atHours())
                        .as("seed %d", seed)
                        .isBetween(read.start().beginsAtHour(), read.start().arrivesAtHour());
                assertThat(e).hasMessageContaining("cannot be followed past hour");
            }
        }
        assertThat(played).as("played to the end").isGreaterThan(SCENARIOS * 9 / 10);
    }

    @Test
    void theDebriefOfAnExtremeScenarioComesToo() {
        int debriefed = 0;
        for (int seed = 0; seed < 4; seed++) {
            PracticeSession session = PracticeSession.begin(new RandomScenario(seed).next(1.5), SessionOptions.DEFAULT);
            Debrief debrief = Debrief.of(WholeSession.by(Hands.NOTHING, session));
            debriefed += debrief.lanes().size() == 3 ? 1 : 0;
        }
        assertThat(debriefed).isEqualTo(4);
    }

    /** A container filled to the brim at a moment when no foam comes; a day of it takes about 1,500 steps. */
    @Test
    void aVesselThatIsExactlyFullHoldsNobodyUp() throws InterruptedException {
        Scenario made = new RandomScenario(543927).next(1);
        SessionOptions options = SessionOptions.DEFAULT.withSeed(543927);
        CountedWork<PracticeSession> played =
                CountedWork.of(() -> WholeSession.by(Hands.NOTHING, PracticeSession.begin(made, options)), MOST_MILLIS);
        assertThat(played.answer().over()).isTrue();
        assertThat(played.steps()).isBetween(100L, 10_000L);
        CountedWork<PracticeSession> stopped = CountedWork.stoppedAt(
                played.steps() / 2,
                () -> WholeSession.by(Hands.NOTHING, PracticeSession.begin(made, options)),
                MOST_MILLIS);
        assertThat(stopped.failure()).isInstanceOf(CancellationException.class);
        assertThat(stopped.steps()).isEqualTo(played.steps() / 2);
    }

    @Test
    void aDebriefStopsWhenItIsTold() {
        PracticeSession session = PracticeSession.begin(ScenarioJson.builtIn("first-steps"), SessionOptions.DEFAULT);
        assertThatThrownBy(() -> Debrief.of(session, () -> true)).isInstanceOf(CancellationException.class);
    }

    @Test
    void aSessionHasAnEnd() {
        PracticeSession session = PracticeSession.begin(ScenarioJson.builtIn("first-steps"), SessionOptions.DEFAULT);
        for (int i = 0; i < PracticeSession.MOST_STEPS; i++) {
            session = session.perform(new SessionStep.Say("step"));
        }
        PracticeSession full = session;
        assertThatThrownBy(() -> full.perform(new SessionStep.Say("one more")))
                .isInstanceOf(RefusedStepException.class)
                .hasMessageContaining("2000");
        assertThat(full.steps()).hasSize(PracticeSession.MOST_STEPS);
    }
}
