package io.github.weirwise.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

class FitCheckTest {
    private final FitCheck training = FitCheck.of(LanternQuaySites.trainingTank());
    private final FitCheck quarantine = FitCheck.of(LanternQuaySites.quarantineTank());
    private final FitCheck school = FitCheck.of(LanternQuaySites.schoolTank());

    @Test
    void theTrainingTankFits() {
        assertThat(training.verdict()).isEqualTo(Fit.FITS);
        assertThat(training.answers()).hasSize(Question.values().length);
        assertThat(training.notAsked()).isEmpty();
    }

    @Test
    void theQuarantineTanksOnlyFailureIsItsDrain() {
        assertThat(failures(quarantine)).containsExactly(Question.DRAIN_FULL);
        FitAnswer drain = quarantine.answer(Question.DRAIN_FULL).orElseThrow();
        assertThat(drain.margin().value()).isNegative();
        assertThat(drain.remedy()).isPresent();
    }

    @Test
    void theSchoolTankFloodsAtAPowerCutAndNeedsASump() {
        assertThat(failures(school)).containsExactly(Question.POWER_CUT, Question.EXTRA_SUMP);
        assertThat(school.drainBack().spilledLitres()).isGreaterThan(20);
    }

    @Test
    void theSumpThatIsAskedForIsLargeEnough() {
        Installation site = LanternQuaySites.schoolTank();
        double free = school.answer(Question.EXTRA_SUMP).orElseThrow().number().value();
        double usableMm = new WetSide(site).highestLevelMm() - new WetSide(site).runningLevelMm();
        double sideMm = Math.sqrt(1.0001 * free / usableMm * 1e6);
        Installation larger = TestSites.withSump(
                site, new ExtraSump(sideMm, sideMm, 0, site.filter().rimMm(), 8));
        FitAnswer again = FitCheck.of(larger).answer(Question.POWER_CUT).orElseThrow();
        assertThat(again.fit()).isEqualTo(Fit.FITS);
        assertThat(FitCheck.of(larger).drainBack().missingLitres()).isCloseTo(0, within(1e-6));
    }

    @Test
    void aSiphonBreakUnderTheSurfaceCuresTheSchoolTank() {
        Installation site = LanternQuaySites.schoolTank();
        ReturnLine drilled = new ReturnLine(site.returnLine().plumbing(), 140, 5, false);
        FitCheck check = FitCheck.of(TestSites.withReturnLine(site, drilled));
        assertThat(check.answer(Question.POWER_CUT).orElseThrow().fit()).isEqualTo(Fit.FITS);
        assertThat(check.answer(Question.POWER_CUT).orElseThrow().cautions())
                .as("a blocked hole would still flood")
                .extracting(Warning::severity)
                .contains(Severity.DANGER);
    }

    @Test
    void theReturnPumpWorksWhereItsCurveMeetsLiftAndLosses() {
        for (Installation site : LanternQuaySites.all()) {
            ReturnPoint point = ReturnPoint.of(site);
            assertThat(site.pump().headMm(point.flowLitresPerHour())).isCloseTo(point.headMm(), within(1e-3));
        }
    }

    @Test
    void aPumpThatCannotLiftTheWaterLeavesFlowQuestionsOpen() {
        Installation site =
                TestSites.withPump(LanternQuaySites.trainingTank(), PumpCurve.of(0, 900, 2000, 500, 4000, 0));
        FitCheck check = FitCheck.of(site);
        assertThat(check.running().flowLitresPerHour()).isZero();
        assertThat(check.verdict()).isEqualTo(Fit.FAILS);
        assertThat(check.notAsked()).contains(Question.TURNOVER, Question.POWER_CUT);
        assertThat(check.answer(Question.HEADROOM)).isPresent();
    }

    @Test
    void aPumpBeyondItsCurveIsCalledTight() {
        Installation site = TestSites.withPump(LanternQuaySites.trainingTank(), PumpCurve.of(0, 4000, 500, 3800));
        FitAnswer answer = FitCheck.of(site).answer(Question.WORKING_POINT).orElseThrow();
        assertThat(answer.fit()).isEqualTo(Fit.TIGHT);
        assertThat(answer.number().value()).isEqualTo(500);
    }

    @Test
    void addingTheStatedWaterLeavesAThirdOfTheMediaCovered() {
        for (FitCheck check : List.of(training, quarantine, school)) {
            FirstFilling filling = check.filling();
            WetSide wet = new WetSide(check.installation());
            double after = wet.litresAt(filling.levelBeforeMm()) - filling.inTransitLitres() + filling.addLitres();
            assertThat(MediaCover.at(wet.installation().filter(), wet.levelAt(after)))
                    .isCloseTo(1.0 / 3, within(1e-9));
        }
    }

    @Test
    void everyAnswerHasWordsASourceAndACommonUnit() {
        PhraseBook english = PhraseBook.ENGLISH_METRIC;
        for (FitCheck check : List.of(training, quarantine, school)) {
            assertThat(english.say(check.summary())).isNotBlank();
            for (FitAnswer answer : check.answers()) {
                assertThat(english.say(answer.question().asked())).endsWith("?");
                assertThat(english.say(answer.sentence())).endsWith(".").doesNotContain("{");
                assertThat(english.say(answer.source())).isNotBlank();
                assertThat(answer.margin().unit()).isEqualTo(answer.number().unit());
                assertThat(answer.limit().unit()).isEqualTo(answer.number().unit());
                answer.cautions()
                        .forEach(caution -> assertThat(english.say(caution)).endsWith("."));
            }
        }
        for (Question question : Question.values()) {
            assertThat(english.say(question.remedy())).endsWith(".");
        }
    }

    @Test
    void aPumpCurveThatRisesIsRefusedWithTheTwoPoints() {
        assertThatThrownBy(() -> PumpCurve.of(0, 1000, 500, 1200))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1200")
                .hasMessageContaining("read the curve again");
    }

    @Test
    void moreWaterThanTheBoxHoldsIsRefused() {
        assertThatThrownBy(() -> new DisplayTank(1000, 500, 0, 400, 450, 201, 20))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("waterLitres");
    }

    private static List<Question> failures(FitCheck check) {
        return check.answers().stream()
                .filter(answer -> answer.fit() == Fit.FAILS)
                .map(FitAnswer::question)
                .toList();
    }
}
