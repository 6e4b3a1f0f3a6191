package io.github.weirwise.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.ProcessPoint.Habit;
import org.junit.jupiter.api.Test;

/** What a debrief raises first is the misconception that it was given, and mending it helps. */
class TraineesTest {
    private static Debrief debrief(Trainee trainee, String scenario) {
        PracticeSession session = trainee.play(ScenarioJson.builtIn(scenario), 3);
        assertThat(session.over()).isTrue();
        return Debrief.of(session);
    }

    private static void raises(Trainee trainee, String scenario, Habit habit) {
        Debrief debrief = debrief(trainee, scenario);
        assertThat(debrief.costliest()).hasValueSatisfying(point -> {
            assertThat(point.habit()).isEqualTo(habit);
            assertThat(point.costDays()).isPositive();
        });
        Outcome after = Outcome.of(trainee.mended(habit).play(ScenarioJson.builtIn(scenario), 3));
        assertThat(after.costDays()).isLessThan(debrief.outcome().costDays());
    }

    @Test
    void whoRaisesTheWeirAtEveryDrynessIsToldToLookAtTheAir() {
        raises(Trainee.RAISER, "slow-drying", Habit.RULED_OUT_THE_AIR_INTAKE);
    }

    @Test
    void whoReadsNothingIsToldToLook() {
        raises(Trainee.BLIND, "first-steps", Habit.LOOKED_BEFORE_MOVING);
    }

    @Test
    void whoAnswersEveryReadingIsToldToWait() {
        raises(Trainee.CHASER, "dirty-neck", Habit.WAITED_FOR_THE_FOAM);
    }

    /** Prices are what lies between the session and sound hands, shared out. */
    @Test
    void thePricesOfHabitsAreNoMoreThanWhatWasLost() {
        Debrief debrief = debrief(Trainee.RAISER, "slow-drying");
        double lost = debrief.outcome().costDays()
                - debrief.decisions().get(0).whatIf().costDays();
        assertThat(debrief.points())
                .allSatisfy(each -> assertThat(each.costDays()).isBetween(0.0, lost + 1));
        assertThat(debrief.inShort()).hasSizeBetween(4, 5);
    }
}
