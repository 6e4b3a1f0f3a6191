package io.github.weirwise.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PracticeSessionTest {
    private static final Prediction WETTER = new Prediction(Trend.MORE, Trend.MORE, 1.5, 0.8);

    private final Scenario scenario = ScenarioJson.builtIn("first-steps");
    private final PracticeSession start = answered(PracticeSession.begin(scenario, SessionOptions.DEFAULT));

    /** Passes over whatever is asked. */
    private static PracticeSession answered(PracticeSession session) {
        PracticeSession now = session;
        while (!now.questions().isEmpty()) {
            now = now.perform(new SessionStep.Answer(now.questions().get(0).name(), 0, ""));
        }
        return now;
    }

    @Test
    void aLookCostsItsMinutesAndGivesAReading() {
        PracticeSession after = start.look(Look.ROUND);
        assertThat((after.hours() - start.hours()) * 60).isCloseTo(6, org.assertj.core.api.Assertions.within(1e-9));
        Reading reading = after.lastReading().orElseThrow();
        assertThat(reading.at()).isEqualTo(after.now());
        assertThat(reading.find(Observation.FunnelLevel.class)).isPresent();
        assertThat(reading.find(Observation.CupVolume.class)).isPresent();
        assertThat(reading.find(Observation.FoamLook.class)).isPresent();
    }

    @Test
    void raisingTheWeirRaisesTheLevelAndWetsTheFoam() {
        PracticeSession raised =
                answered(start.act(new Act.MoveWeir(4), WETTER)).waitFor(1440);
        assertThat(raised.truePoint().submergenceMm())
                .isGreaterThan(start.truePoint().submergenceMm() + 2);
        assertThat(raised.truth().of(Stock.SKIMMATE_ML_PER_DAY))
                .isGreaterThan(1.4 * start.truth().of(Stock.SKIMMATE_ML_PER_DAY));
        assertThat(raised.journal().last(WeirMove.class).orElseThrow().toCrestMm())
                .isEqualTo(start.markMm() + 4);
    }

    @Test
    void aSecondChangeInsideTheWaitWantsAReasonAndIsLoggedNotBarred() {
        PracticeSession once = answered(start.act(new Act.MoveWeir(2), WETTER));
        SessionStep again = new SessionStep.Do(new Act.MoveWeir(2), WETTER, "");
        assertThat(once.settlesAt()).isPresent();
        assertThatThrownBy(() -> once.perform(again)).isInstanceOf(RefusedStepException.class);
        PracticeSession twice = once.act(new Act.MoveWeir(2), WETTER, "it is far too dry");
        assertThat(twice.log().get(twice.log().size() - 1).insideWait()).isTrue();
        PracticeSession waited = answered(once.waitFor(1440));
        assertThat(waited.settlesAt()).isEmpty();
        assertThat(waited.perform(again).markMm()).isEqualTo(start.markMm() + 4);
    }

    @Test
    void theAdvisersViewOpensAfterTheOwnOneAndShutsWithTheNextAct() {
        PracticeSession read = answered(start.look(Look.ROUND));
        SessionStep open = new SessionStep.OpenAdvice();
        assertThat(read.refusal(open)).isPresent();
        assertThat(read.advice()).isEmpty();
        PracticeSession opened =
                read.ownView(FaultSheet.certain(Cause.WEIR_TOO_LOW), "raise it").perform(open);
        assertThat(opened.advice()).isPresent();
        assertThat(answered(opened.act(new Act.MoveWeir(2), WETTER)).advice()).isEmpty();
        SessionOptions alone = SessionOptions.DEFAULT.withGuidance(Guidance.NONE);
        PracticeSession shut = PracticeSession.begin(scenario, alone).ownView(FaultSheet.certain(Cause.NECK_DIRTY), "");
        assertThat(shut.refusal(open)).isPresent();
    }

    @Test
    void theTrainerHoldsInjectsAndReveals() {
        PracticeSession held = start.perform(new SessionStep.Hold(true));
        assertThat(held.refusal(new SessionStep.Wait(10))).isPresent();
        PracticeSession again = held.perform(new SessionStep.Hold(false));
        TankEvent stop = new TankEvent.InjectorPump(again.hours(), false);
        PracticeSession stopped = again.perform(new SessionStep.Inject(stop, "Somebody pulled a plug."))
                .waitFor(720);
        assertThat(stopped.truth().of(Stock.SKIMMATE_ML_PER_DAY))
                .isLessThan(0.1 * start.truth().of(Stock.SKIMMATE_ML_PER_DAY));
        assertThat(stopped.messages()).extracting(Message::says).contains("Somebody pulled a plug.");
        SessionStep past = new SessionStep.Inject(new TankEvent.InjectorPump(0, false), "");
        assertThat(stopped.refusal(past)).isPresent();
    }

    @Test
    void rewindingGivesTheSameMomentAndBranchesLeaveItAlone() {
        PracticeSession one = answered(start.look(Look.ROUND)).waitFor(60);
        PracticeSession two = answered(one.act(new Act.MoveWeir(3), WETTER)).waitFor(1440);
        PracticeSession back = two.rewoundTo(one.steps().size());
        assertThat(back.truth()).isEqualTo(one.truth());
        PracticeSession branch =
                answered(back.act(new Act.MoveWeir(-3), WETTER)).waitFor(1440);
        assertThat(branch.truth().of(Stock.SKIMMATE_ML_PER_DAY))
                .isLessThan(two.truth().of(Stock.SKIMMATE_ML_PER_DAY));
        assertThat(two.rewoundTo(0).truth())
                .isEqualTo(
                        PracticeSession.begin(scenario, SessionOptions.DEFAULT).truth());
    }

    @Test
    void aRecordReplaysToTheSameStateBitForBit() {
        PracticeSession session = answered(start.look(Look.ROUND));
        session = answered(session.act(new Act.MoveWeir(3), WETTER)).runOn();
        session = answered(session).look(Look.ROUND);
        session = session.ownView(FaultSheet.certain(Cause.NOTHING_WRONG), "").waitFor(600);
        SessionRecord kept = ScenarioJson.readSession(ScenarioJson.writeSession(session.toRecord()));
        PracticeSession again = PracticeSession.replay(kept);
        assertThat(again.truth()).isEqualTo(session.truth());
        assertThat(again.journal()).isEqualTo(session.journal());
        assertThat(again.track()).isEqualTo(session.track());
        assertThat(again.log()).isEqualTo(session.log());
    }

    @Test
    void readingsErrBySeedAndNotWithoutError() {
        Optional<Observation.FunnelLevel> one = level(1);
        assertThat(level(1)).isEqualTo(one);
        assertThat(java.util.stream.IntStream.range(1, 30)
                        .mapToObj(PracticeSessionTest.this::level)
                        .distinct())
                .hasSizeGreaterThan(1);
    }

    private Optional<Observation.FunnelLevel> level(int seed) {
        PracticeSession session = answered(PracticeSession.begin(scenario, SessionOptions.DEFAULT.withSeed(seed)));
        return session.look(Look.FUNNEL_LEVEL).lastReading().orElseThrow().find(Observation.FunnelLevel.class);
    }

    /** What a trainer asks stands open like a question of the scenario, and its answer is in the debrief. */
    @Test
    void theClockStandsWhileTheTrainersQuestionIsOpen() {
        PracticeSession asked = Hands.passOver(
                        PracticeSession.begin(ScenarioJson.builtIn("leave-it"), SessionOptions.DEFAULT))
                .perform(new SessionStep.Ask("What do you expect?"));
        assertThat(asked.questions()).extracting(Question::ask).containsExactly("What do you expect?");
        assertThat(asked.refusal(new SessionStep.Wait(60))).isPresent();
        PracticeSession answered =
                asked.perform(new SessionStep.Answer(asked.questions().get(0).name(), 0, "nothing will change"));
        assertThat(answered.questions()).isEmpty();
        assertThat(QuestionResult.of(answered).get(0).answer().orElseThrow().words())
                .isEqualTo("nothing will change");
        assertThat(PracticeSession.replay(ScenarioJson.readSession(ScenarioJson.writeSession(answered.toRecord())))
                        .questions())
                .isEmpty();
    }

    /** The replay shows the tank of then, not of now. */
    @Test
    void theTankOfAnHourIsTheTankThatWas() {
        PracticeSession start =
                Hands.passOver(PracticeSession.begin(ScenarioJson.builtIn("growing-load"), SessionOptions.DEFAULT));
        PracticeSession later = start.waitFor(1440);
        PracticeSession end = Hands.passOver(
                        later.act(new Act.MoveWeir(-4), new Prediction(Trend.LESS, Trend.LESS, 2, 0.8)))
                .waitFor(1440);
        assertThat(end.tankAt(later.hours()).truth()).isEqualTo(later.truth());
        assertThat(end.tankAt(start.hours() + 6).truth())
                .isEqualTo(start.waitFor(360).truth());
        assertThat(end.tankAt(1e6).truth()).isEqualTo(end.truth());
    }
}
