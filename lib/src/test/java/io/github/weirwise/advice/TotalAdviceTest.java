package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import io.github.weirwise.Weirwise;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whatever the records allow is answered: nothing throws, nothing is NaN. */
class TotalAdviceTest {
    private static final int CASES = 3000;

    private interface Attempt {
        void of(LegalDomain any) throws Exception;
    }

    private static void always(Attempt attempt) {
        for (long seed = 0; seed < CASES; seed++) {
            try {
                attempt.of(new LegalDomain(seed));
            } catch (Throwable e) {
                fail("seed " + seed + ": " + e, e);
            }
        }
    }

    @Test
    void everyLegalUnitHasAnOperatingPointThatCanBeWritten() {
        always(any -> {
            SkimmerUnit unit = any.unit();
            OperatingPoint point = OperatingPoint.of(unit, any.settings());
            assertThat(WeirwiseJson.writeOperatingPoint(point)).doesNotContain("NaN", "Infinity");
            point.warnings().forEach(each -> PhraseBook.ENGLISH_METRIC.say(each.text()));
        });
    }

    @Test
    void theGuardAnswersEveryJournal() {
        always(any -> {
            SkimmerUnit unit = any.unit();
            GuardScene scene =
                    GuardScene.of(unit, any.settings(), any.journal(12), any.instant(), AdviserOptions.DEFAULT.looks());
            Optional<Guard> guard = Guard.of(scene);
            guard.ifPresent(found -> {
                PhraseBook.ENGLISH_METRIC.say(StepWords.of(found.step(), scene.now()));
                PhraseBook.ENGLISH_METRIC.say(found.rule().words());
                assertThat(new ChangeOfMind(scene).lines(found.step(), Optional.of(found.rule())))
                        .isNotEmpty()
                        .allSatisfy(each ->
                                assertThat(PhraseBook.ENGLISH_METRIC.say(each)).isNotBlank());
            });
            LevelOff.in(scene).ifPresent(off -> assertThat(off.meanMm()).isFinite());
            PartSeen.bad(scene);
            new Cautions(scene).of(new Step.Look(LookKind.FOAM_LOOK), Optional.of(Duration.ofHours(5)));
            new LookAgain(Clocks.COMMON_PRACTICE, scene.now())
                    .floodLookAt(new Step.Look(LookKind.FOAM_LOOK), Optional.of(Duration.ofDays(20)));
        });
    }

    @Test
    void upkeepIsPlannedForEveryJournal() {
        always(any -> CarePlan.of(any.journal(12), any.instant()));
    }

    @Test
    void everythingLegalGetsAdvice() {
        always(any -> {
            SkimmerUnit unit = any.unit();
            Advice advice = Weirwise.advise(unit, any.settings(), any.journal(12), any.instant());
            assertThat(advice.expectation().chanceOnTarget()).isBetween(0.0, 1.0);
            assertThat(PhraseBook.ENGLISH_METRIC.say(advice.what())).isNotBlank();
            assertThat(WeirwiseJson.writeAdvice(advice)).doesNotContain("NaN", "Infinity");
        });
    }

    @Test
    void settingsAtTheirLimitsGetAdvice() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        Settings usual = unit.ratedSettings(205);
        for (Settings start : List.of(
                usual.withAirLitresPerHour(0),
                usual.withPracticalSalinity(0),
                usual.withFlowLitresPerHour(100000),
                usual.withFlowLitresPerHour(0),
                usual.withWeirCrestMm(2000))) {
            for (Instant now : List.of(Instant.parse("2026-03-02T08:00:00Z"), Instant.MIN, Instant.MAX)) {
                assertThat(Weirwise.advise(unit, start, Journal.EMPTY, now)).isNotNull();
            }
        }
    }
}
