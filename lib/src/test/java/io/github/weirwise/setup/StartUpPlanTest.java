package io.github.weirwise.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Severity;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartUpPlanTest {
    private final FitCheck check = FitCheck.of(LanternQuaySites.trainingTank());
    private final StartUpPlan plan = StartUpPlan.of(check);

    @Test
    void theOrderIsTheTradesOwn() {
        assertThat(plan.steps()).extracting(StartUpStep::task).containsExactly(StartUpTask.values());
        assertThat(place(StartUpTask.LEAKS)).isLessThan(place(StartUpTask.POWER));
        assertThat(place(StartUpTask.FILL)).isLessThan(place(StartUpTask.FILL_TANK));
        assertThat(place(StartUpTask.SET_WEIR)).isLessThan(place(StartUpTask.FILL));
        assertThat(place(StartUpTask.POWER)).isLessThan(place(StartUpTask.START_RETURN));
    }

    @Test
    void theWeirStartsWhereTheInverseSolverPutsIt() {
        Settings settings = check.weir().settings();
        assertThat(plan.steps().get(place(StartUpTask.SET_WEIR)).figure().value())
                .isEqualTo(settings.weirCrestMm());
        assertThat(OperatingPoint.of(check.installation().filter().unit(), settings)
                        .submergenceMm())
                .isCloseTo(13, within(1e-4));
    }

    /** Common practice: about half of the media covered at first filling, no more than a third drowned when running. */
    @Test
    void halfOfTheMediaIsCoveredBeforeTheStartAndAThirdInRunning() {
        WetSide wet = new WetSide(check.installation());
        assertThat(MediaCover.at(
                        wet.installation().filter(),
                        plan.steps().get(place(StartUpTask.FILL)).figure().value()))
                .isCloseTo(0.5, within(1e-9));
        assertThat(MediaCover.at(
                        wet.installation().filter(),
                        plan.steps()
                                .get(place(StartUpTask.RUNNING_LEVEL))
                                .figure()
                                .value()))
                .isCloseTo(1.0 / 3, within(1e-9));
    }

    /** Common practice: the air line's end stays above the highest pump-off level. */
    @Test
    void theAirLineEndsAboveEveryLevelOfEverySite() {
        for (Installation site : LanternQuaySites.all()) {
            FitCheck any = FitCheck.of(site);
            double end = StartUpPlan.airLineEndMm(any);
            assertThat(end).isGreaterThan(any.drainBack().levelAfterMm());
            assertThat(end)
                    .isGreaterThan(site.filter().chamberFloorMm()
                            + site.filter().unit().weir().highestCrestMm());
        }
    }

    @Test
    void aPlanForAUnitThatDoesNotFitSaysSoFirst() {
        StartUpPlan bad = StartUpPlan.of(FitCheck.of(LanternQuaySites.schoolTank()));
        assertThat(bad.warnings().get(0).severity()).isEqualTo(Severity.DANGER);
        assertThat(plan.warnings().get(0).severity()).isEqualTo(Severity.CAUTION);
    }

    /** Common practice and usual electrical cautions. */
    @Test
    void everyStepSaysWhatToDoToSeeAndToMind() {
        PhraseBook english = PhraseBook.ENGLISH_METRIC;
        StringBuilder all = new StringBuilder();
        for (StartUpStep step : plan.steps()) {
            for (String words : List.of(
                    english.say(step.todo()),
                    english.say(step.see()),
                    english.say(step.ifNot()),
                    english.say(step.caution()))) {
                assertThat(words).endsWith(".").doesNotContain("{");
                all.append(words).append('\n');
            }
        }
        assertThat(all)
                .contains("Unplug before hands go in")
                .contains("no larger than the tank can take")
                .contains("above the highest pump-off level")
                .contains("siphon-break hole open")
                .contains("licensed electrician")
                .contains("Rehearse a power cut")
                .contains("No detergent");
    }

    @Test
    void theBreakInStagesFollowEachOtherWithoutAGap() {
        List<BreakInStage> stages = plan.breakIn();
        assertThat(stages.get(0).days().low()).isZero();
        for (int i = 1; i < stages.size(); i++) {
            assertThat(stages.get(i).days().low())
                    .isEqualTo(stages.get(i - 1).days().high());
        }
        assertThat(stages.get(stages.size() - 1).days().low()).isEqualTo(BreakInStage.USUAL_TUNING_DAY);
    }

    private static int place(StartUpTask task) {
        return task.ordinal();
    }
}
