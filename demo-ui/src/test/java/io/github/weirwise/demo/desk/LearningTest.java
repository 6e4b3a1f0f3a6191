package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.SafeWay;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A plan to learn a unit lives in the journal, gives one step a visit, and gives way to what makes safe. */
class LearningTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");

    private static Learning plan() {
        TankDesk desk = Sample.desk();
        LearningPlan plan = LearningPlan.of(
                        desk.unit(), desk.told(), desk.journal(), desk.now(), LearningPlan.Wish.USUAL)
                .orElseThrow();
        return Learning.of(plan, desk.settings().weirCrestMm());
    }

    private static Advice given() {
        TankDesk desk = Sample.desk();
        return Weirwise.advise(desk.unit(), desk.told(), desk.journal(), desk.now());
    }

    @Test
    void whatIsNotedIsReadAgain() {
        Learning plan = plan();
        Learning read = Learning.in(Journal.of(plan.begin(NOW))).orElseThrow();
        assertThat(read.runs()).isTrue();
        assertThat(read.stages()).hasSameSizeAs(plan.stages());
        for (int i = 0; i < plan.stages().size(); i++) {
            assertThat(read.stages().get(i).from())
                    .isEqualTo(plan.stages().get(i).from());
            assertThat(read.stages().get(i).weirCrestMm())
                    .isEqualTo(plan.stages().get(i).weirCrestMm());
            assertThat(read.stages().get(i).floodChance()).isBetween(0.0, LearningPlan.Wish.USUAL.mostFloodChance());
        }
        assertThat(read.plan().slopeAfter().width())
                .isLessThan(read.plan().slopeNow().width());
        assertThat(Learning.in(Journal.of(plan.begin(NOW), Learning.end(NOW.plusSeconds(60))))
                        .orElseThrow()
                        .over())
                .contains(NOW.plusSeconds(60));
    }

    @Test
    void aNoteThatOnlyLooksLikeAPlanIsNone() {
        String text = plan().begin(NOW).text();
        for (String other : List.of(
                text.replace("Learning plan", "Lesson plan"),
                text.replaceFirst("until \\S+Z", "until yesterdayZ"),
                text.substring(0, text.indexOf(": 2") + 2))) {
            assertThat(Learning.in(Journal.of(new Note(NOW, other)))).as(other).isEmpty();
        }
    }

    @Test
    void eachVisitHasTheStepOfItsSetting() {
        Learning plan = plan();
        Advice given = given();
        for (LearningPlan.Stage stage : plan.stages()) {
            Instant visit = stage.from().plus(Duration.ofHours(1));
            Advice toSet = new LearningStep(
                            plan,
                            given,
                            stage.weirCrestMm() - 5,
                            visit,
                            Sample.desk().clock())
                    .advice();
            assertThat(toSet.step()).isEqualTo(new Step.MoveWeir(5, stage.weirCrestMm(), false));
            assertThat(toSet.floodLookAt()).contains(visit.plus(Duration.ofMinutes(20)));
            assertThat(toSet.cautions().get(0).text().key()).isEqualTo("advice.caution.unplug");
            assertThat(toSet.expectation().skimmateMlPerDay()).isEqualTo(stage.skimmateMlPerDay());
            Advice toLeave = new LearningStep(
                            plan,
                            given,
                            stage.weirCrestMm(),
                            visit,
                            Sample.desk().clock())
                    .advice();
            assertThat(toLeave.step()).isInstanceOf(Step.Hold.class);
            assertThat(toLeave.judgeAt()).isBeforeOrEqualTo(stage.until());
        }
        LearningStep back = new LearningStep(
                plan, given, plan.homeMm() + 2, plan.plan().end(), Sample.desk().clock());
        assertThat(back.isThrough()).isFalse();
        assertThat(back.advice().step()).isEqualTo(new Step.MoveWeir(-2, plan.homeMm(), false));
        assertThat(new LearningStep(
                                plan,
                                given,
                                plan.homeMm(),
                                plan.plan().end(),
                                Sample.desk().clock())
                        .isThrough())
                .isTrue();
    }

    @Test
    void whatMakesSafeEndsThePlan() {
        Advice given = given();
        Advice danger = new Advice(
                new Step.MakeSafe(SafeWay.LOWER_WEIR, -10, 190, 100),
                given.what(),
                given.diagnosis(),
                given.expectation(),
                Optional.empty(),
                NOW,
                given.why(),
                List.of(),
                given.cautions());
        assertThat(new LearningStep(plan(), danger, 200, NOW, Sample.desk().clock()).mustEnd())
                .isTrue();
        assertThat(new LearningStep(plan(), given, 200, NOW, Sample.desk().clock()).mustEnd())
                .isFalse();
    }
}
