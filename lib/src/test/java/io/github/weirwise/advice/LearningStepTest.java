package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A plan to learn a unit gives one step a visit, brings everything back, and gives way to what makes safe. */
class LearningStepTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings START = UNIT.ratedSettings(205);
    private static final Instant NOW = Instant.parse("2026-03-09T08:00:00Z");
    private static final Journal JOURNAL = journal();
    private static final LearningPlan PLAN = LearningPlan.of(
                    UNIT, START, JOURNAL, NOW, new LearningPlan.Wish(10, 0.02, true))
            .orElseThrow();
    private static final Advice GIVEN = new Adviser(AdviserOptions.DEFAULT).advise(UNIT, START, JOURNAL, NOW);

    private static Journal journal() {
        List<Reading> all = new ArrayList<>();
        for (int day = 7; day > 0; day--) {
            all.add(Reading.of(
                    NOW.minus(Duration.ofDays(day)),
                    new Observation.FunnelLevel(22),
                    new Observation.CupVolume(240 + day, 24, false)));
        }
        return Journal.of(all.toArray(Reading[]::new));
    }

    private static Optional<Advice> at(Instant visit, double crestMm, double air) {
        Settings settings = START.withWeirCrestMm(crestMm).withAirLitresPerHour(air);
        return LearningStep.of(PLAN, GIVEN, UNIT, settings, visit);
    }

    @Test
    void eachVisitHasTheStepOfItsSetting() {
        for (LearningPlan.Stage stage : PLAN.stages()) {
            Instant visit = stage.from().plus(Duration.ofHours(1));
            double air = stage.airLitresPerHour();
            Advice set = at(visit, stage.weirCrestMm() - 5, air).orElseThrow();
            assertThat(set.step()).isEqualTo(new Step.MoveWeir(5, stage.weirCrestMm(), false));
            assertThat(set.what().key()).isEqualTo("advice.learn.set");
            assertThat(set.floodLookAt()).contains(visit.plus(Duration.ofMinutes(20)));
            assertThat(set.cautions().get(0).text().key()).isEqualTo("advice.caution.unplug");
            assertThat(set.expectation().skimmateMlPerDay()).isEqualTo(stage.skimmateMlPerDay());
            assertThat(set.expectation().chanceOnTarget()).isBetween(0.0, 1.0);
            Advice leave = at(visit, stage.weirCrestMm(), air).orElseThrow();
            assertThat(leave.step()).isInstanceOf(Step.Hold.class);
            assertThat(leave.what().key()).isEqualTo("advice.learn.hold");
            assertThat(leave.judgeAt()).isBeforeOrEqualTo(stage.until());
        }
    }

    @Test
    void theAirIsTurnedByWords() {
        LearningPlan.Stage last = PLAN.stages().get(PLAN.stages().size() - 1);
        assertThat(last.airLitresPerHour()).isLessThan(START.airLitresPerHour());
        Advice turn =
                at(last.from(), last.weirCrestMm(), START.airLitresPerHour()).orElseThrow();
        assertThat(turn.what().key()).isEqualTo("advice.learn.air");
        assertThat(turn.step()).isInstanceOf(Step.Hold.class);
    }

    @Test
    void atTheEndAllGoesBack() {
        double home = START.weirCrestMm();
        double air = START.airLitresPerHour();
        assertThat(at(PLAN.end(), home + 2, air).orElseThrow().step()).isEqualTo(new Step.MoveWeir(-2, home, false));
        assertThat(at(PLAN.end(), home, 0.85 * air).orElseThrow().what().key()).isEqualTo("advice.learn.airBack");
        assertThat(at(PLAN.end(), home, air)).isEmpty();
    }

    @Test
    void whatMakesSafeEndsThePlan() {
        Advice danger = new Advice(
                new Step.MakeSafe(SafeWay.LOWER_WEIR, -10, 190, 100),
                GIVEN.what(),
                GIVEN.diagnosis(),
                GIVEN.expectation(),
                Optional.empty(),
                NOW,
                GIVEN.why(),
                List.of(),
                GIVEN.cautions());
        assertThat(LearningStep.of(PLAN, danger, UNIT, START, NOW)).isEmpty();
    }
}
