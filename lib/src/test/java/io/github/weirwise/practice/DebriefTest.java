package io.github.weirwise.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.ProcessPoint.Habit;
import io.github.weirwise.practice.ProcessPoint.Verdict;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Reason;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a debrief shows is what was done, and what would have come of doing otherwise. */
class DebriefTest {
    private static final Prediction WETTER = new Prediction(Trend.MORE, Trend.MORE, 1.5, 0.9);
    private static final Prediction DRIER = new Prediction(Trend.LESS, Trend.LESS, 1.5, 0.9);

    private static PracticeSession begin(String name) {
        return Hands.passOver(PracticeSession.begin(ScenarioJson.builtIn(name), SessionOptions.DEFAULT));
    }

    private static Map<Habit, Verdict> habits(PracticeSession session) {
        return new ProcessReview(session)
                .points().stream().collect(Collectors.toMap(ProcessPoint::habit, ProcessPoint::verdict));
    }

    private static PracticeSession toTheEnd(PracticeSession session) {
        return Hands.waitUntil(session, session.scenario().endsAtHour());
    }

    /** Raises twice in one visit, without having looked at anything. */
    private static PracticeSession hasty() {
        PracticeSession raised = Hands.passOver(begin("slow-drying").act(new Act.MoveWeir(4), WETTER));
        return toTheEnd(raised.act(new Act.MoveWeir(4), WETTER, "it is far too dry"));
    }

    /** Looks round, then at the air line, cleans it and waits. */
    private static PracticeSession sound() {
        PracticeSession seen =
                Hands.passOver(begin("slow-drying").look(Look.ROUND)).look(Look.AIR_LINE);
        PracticeSession told = seen.ownView(FaultSheet.certain(Cause.AIR_LINE_RESTRICTED), "clean it");
        Prediction same = new Prediction(Trend.MORE, Trend.MORE, 8, 0.9);
        return toTheEnd(Hands.passOver(told.act(new Act.ServicePart(Part.AIR_LINE), same)));
    }

    @Test
    void soundWorkAndHastyWorkAreTold() {
        assertThat(habits(hasty()))
                .containsEntry(Habit.ONE_CHANGE_AT_A_TIME, Verdict.MISSED)
                .containsEntry(Habit.WAITED_FOR_THE_FOAM, Verdict.MISSED)
                .containsEntry(Habit.LOOKED_BEFORE_MOVING, Verdict.MISSED)
                .containsEntry(Habit.RULED_OUT_THE_AIR_INTAKE, Verdict.MISSED)
                .containsEntry(Habit.LEFT_WELL_ALONE, Verdict.MISSED)
                .containsEntry(Habit.MADE_SAFE_FIRST, Verdict.NO_OCCASION);
        assertThat(habits(sound()))
                .containsEntry(Habit.ONE_CHANGE_AT_A_TIME, Verdict.KEPT)
                .containsEntry(Habit.WAITED_FOR_THE_FOAM, Verdict.KEPT)
                .containsEntry(Habit.LOOKED_BEFORE_MOVING, Verdict.KEPT)
                .containsEntry(Habit.RULED_OUT_THE_AIR_INTAKE, Verdict.KEPT)
                .containsEntry(Habit.LEFT_WELL_ALONE, Verdict.KEPT);
    }

    @Test
    void aRaiseAfterALookAtTheAirIsNoHabitMissed() {
        PracticeSession looked = Hands.passOver(begin("slow-drying").look(Look.AIR_FLOW));
        PracticeSession raised = looked.act(new Act.MoveWeir(2), WETTER);
        assertThat(habits(raised)).containsEntry(Habit.RULED_OUT_THE_AIR_INTAKE, Verdict.KEPT);
    }

    @Test
    void whoMakesSafeFirstIsToldFromWhoDoesNot() {
        PracticeSession called = Hands.passOver(begin("pale-flood").waitFor(200));
        PracticeSession later = Hands.passOver(called.waitFor(60));
        PracticeSession stopped = later.act(new Act.StopAir(), DRIER).waitFor(600);
        assertThat(habits(stopped)).containsEntry(Habit.MADE_SAFE_FIRST, Verdict.KEPT);
        PracticeSession washed = Hands.passOver(later.act(new Act.ServicePart(Part.NECK_AND_CUP), DRIER));
        assertThat(habits(washed.waitFor(600))).containsEntry(Habit.MADE_SAFE_FIRST, Verdict.MISSED);
        assertThat(habits(later.waitFor(600))).containsEntry(Habit.MADE_SAFE_FIRST, Verdict.MISSED);
    }

    @Test
    void theDebriefHasLanesDecisionsAndBranches() {
        PracticeSession session = hasty();
        Debrief debrief = Debrief.of(session);
        assertThat(debrief.hidden()).extracting(HiddenFault::cause).containsExactly(Cause.AIR_LINE_RESTRICTED);
        assertThat(debrief.lanes()).hasSize(3);
        assertThat(debrief.outcome().solved()).isFalse();
        assertThat(debrief.outcome().moves()).isEqualTo(2);
        Decision first = debrief.decisions().get(0);
        assertThat(first.whatIf().hours()).isCloseTo(session.scenario().goals().lastsHours(), within(1e-6));
        assertThat(first.whatIf().organicsRemovedG())
                .isGreaterThan(debrief.outcome().organicsRemovedG());
        assertThat(debrief.lanes().get(1).outcome().organicsRemovedG())
                .isGreaterThan(debrief.lanes().get(2).outcome().organicsRemovedG());
        assertThat(session.rewoundTo(first.steps()).hours()).isEqualTo(first.atHours());
        assertThat(Debrief.of(session)).isEqualTo(debrief);
    }

    /** Every sentence of a debrief has words. */
    @Test
    void everythingCanBeSaid() {
        Debrief debrief = Debrief.of(sound());
        PhraseBook book = PhraseBook.ENGLISH_METRIC;
        List<Phrase> phrases = new ArrayList<>(Debrief.OWN_WORDS);
        debrief.points()
                .forEach(each -> phrases.addAll(
                        List.of(each.habit().words(), each.verdict().words(), each.reason())));
        debrief.predictions().forEach(each -> phrases.add(each.why()));
        debrief.lanes().forEach(each -> phrases.add(each.who()));
        debrief.outcome().goals().forEach(each -> phrases.add(each.what()));
        debrief.decisions().forEach(each -> phrases.addAll(each.known()));
        phrases.addAll(debrief.inShort());
        assertThat(phrases)
                .hasSizeGreaterThan(15)
                .allSatisfy(each -> assertThat(book.say(each)).isNotBlank().doesNotContain("{"));
        assertThat(book.say(Reason.of(debrief.decisions().get(0).advice().what())))
                .isNotBlank();
    }

    @Test
    void aRightPredictionIsAHitAndAWrongOneIsNot() {
        PracticeSession right = Hands.passOver(begin("first-steps").act(new Act.MoveWeir(4), WETTER));
        PredictionResult hit = PredictionResult.of(right.waitFor(1440)).get(0);
        assertThat(hit.judged()).isTrue();
        assertThat(hit.level()).isEqualTo(Trend.MORE);
        assertThat(hit.hit()).isTrue();
        PracticeSession wrong = Hands.passOver(begin("first-steps").act(new Act.MoveWeir(4), DRIER));
        PredictionResult miss = PredictionResult.of(wrong.waitFor(1440)).get(0);
        assertThat(miss.hit()).isFalse();
        assertThat(PredictionResult.of(wrong).get(0).judged()).isFalse();
    }

    @Test
    void aFaultSheetIsHeldAgainstTheTruth() {
        Set<Cause> truth = Set.of(Cause.NECK_DIRTY);
        assertThat(FaultSheet.certain(Cause.NECK_DIRTY).onTruth(truth)).isEqualTo(1);
        assertThat(FaultSheet.certain(Cause.LOW_LOAD).onTruth(truth)).isZero();
        FaultSheet halves = new FaultSheet(Map.of(Cause.NECK_DIRTY, 0.5, Cause.LOW_LOAD, 0.5));
        assertThat(halves.onTruth(truth)).isEqualTo(0.5);
        assertThat(halves.onTruth(Set.of(Cause.NECK_DIRTY, Cause.LOW_LOAD))).isEqualTo(1);
        assertThat(FaultSheet.certain(Cause.NOTHING_WRONG).onTruth(Set.of())).isEqualTo(1);
    }

    @Test
    void confidenceIsToldFromThreePredictionsOn() {
        PredictionResult hit = result(Trend.MORE, 2, 0.95);
        PredictionResult miss = result(Trend.LESS, 2, 0.95);
        PredictionResult shy = result(Trend.MORE, 2, 0.4);
        assertThat(PredictionScore.of(List.of(miss, miss)).confidence()).isEqualTo(PredictionScore.Confidence.TOO_FEW);
        assertThat(PredictionScore.of(List.of(hit, miss, miss)).confidence())
                .isEqualTo(PredictionScore.Confidence.OVER);
        assertThat(PredictionScore.of(List.of(hit, hit, hit)).confidence()).isEqualTo(PredictionScore.Confidence.FAIR);
        assertThat(PredictionScore.of(List.of(shy, shy, shy)).confidence()).isEqualTo(PredictionScore.Confidence.UNDER);
        assertThat(PredictionScore.of(List.of(hit)).meanFoldOff()).isCloseTo(1, within(1e-9));
    }

    private static PredictionResult result(Trend foam, double times, double sure) {
        return new PredictionResult(
                0, new Act.MoveWeir(2), new Prediction(Trend.MORE, foam, times, sure), true, 2, 2, 100);
    }

    @Test
    void whatTheTrainerInjectsHappensInEveryLane() {
        PracticeSession start = begin("leave-it");
        TankEvent stop = new TankEvent.InjectorPump(start.hours() + 24, false);
        PracticeSession stopped = toTheEnd(start.perform(new SessionStep.Inject(stop, "")));
        Debrief debrief = Debrief.of(stopped);
        double untouched = Outcome.of(toTheEnd(start)).organicsRemovedG();
        assertThat(debrief.lanes().get(2).outcome().organicsRemovedG()).isLessThan(0.5 * untouched);
    }

    private static List<String> inShort(PracticeSession session) {
        return Debrief.of(session).inShort().stream()
                .map(PhraseBook.ENGLISH_METRIC::say)
                .toList();
    }

    @Test
    void fiveSentencesFitHoweverTheSessionWent() {
        assertThat(inShort(begin("first-steps")).get(2))
                .isEqualTo("Nothing was done yet, so there is nothing to judge.");
        List<String> idle = inShort(Hands.NOTHING.play(begin("slow-drying"), () -> false));
        assertThat(idle.get(0)).startsWith("Not all that was asked for was reached");
        assertThat(idle.get(2)).startsWith("What cost most: nothing was done").contains("air line");
        assertThat(idle).noneMatch(each -> each.startsWith("Well done"));
        List<String> leftAlone = inShort(Hands.NOTHING.play(begin("leave-it"), () -> false));
        assertThat(leftAlone.get(2)).startsWith("No habit was missed");
        assertThat(leftAlone.get(3)).startsWith("Well done: Leave alone");
        PracticeSession wet = begin("first-steps");
        wet = wet.act(new Act.MoveWeir(20), new Prediction(Trend.MORE, Trend.MORE, 3, 0.8));
        List<String> flooded = inShort(toTheEnd(wet));
        assertThat(flooded.get(2)).startsWith("What cost most: Monday").contains("20 mm");
        List<String> right = inShort(Hands.ADVISER.play(begin("slow-drying"), () -> false));
        assertThat(right.get(0)).startsWith("All that was asked for was reached");
        for (List<String> each : List.of(idle, leftAlone, flooded, right)) {
            assertThat(each).hasSizeBetween(4, 5);
        }
    }
}
