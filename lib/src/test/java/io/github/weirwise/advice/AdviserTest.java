package io.github.weirwise.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.Weirwise;
import io.github.weirwise.diagnosis.Cause;
import io.github.weirwise.diagnosis.Verdict;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.unit.Column;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Target;
import io.github.weirwise.unit.Weir;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdviserTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant YESTERDAY = NOW.minus(Duration.ofHours(24));
    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings atTarget = unit.ratedSettings(205);

    private Advice advise(Settings start, Journal journal) {
        return Weirwise.advise(unit, start, journal, NOW);
    }

    private static Reading routine(Instant at, double levelMm, double mlPerDay, DarknessWord dark, FoamLookWord look) {
        return Reading.of(
                at,
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(mlPerDay, 24, false),
                new Observation.Darkness(dark),
                new Observation.FoamLook(look));
    }

    private static Reading everythingSound() {
        return Reading.of(
                NOW,
                new Observation.Inspection(Part.AIR_LINE, Finding.GOOD),
                new Observation.Inspection(Part.NECK_AND_CUP, Finding.GOOD),
                new Observation.Inspection(Part.CUP_VENT, Finding.GOOD),
                new Observation.Inspection(Part.SEATING, Finding.GOOD),
                new Observation.Inspection(Part.RETURN_WATER, Finding.GOOD),
                new Observation.Inspection(Part.ADDITIVES, Finding.GOOD),
                new Observation.CrestAgainstMark(0),
                new Observation.ReturnFlow(2200),
                new Observation.LevelBeyondWeir(-40),
                new Observation.Salinity(35),
                new Observation.AirFlow(150));
    }

    @Test
    void aDryCupWithALowLevelAsksToRaiseTheWeir() {
        Advice advice = advise(
                unit.ratedSettings(195),
                Journal.of(
                        routine(YESTERDAY, 12, 22, DarknessWord.COFFEE, FoamLookWord.STIFF),
                        routine(NOW, 11, 20, DarknessWord.COFFEE, FoamLookWord.STIFF),
                        everythingSound()));
        assertThat(advice.diagnosis().verdict()).isEqualTo(Verdict.TOO_DRY);
        assertThat(advice.step())
                .isInstanceOfSatisfying(
                        Step.MoveWeir.class, move -> assertThat(move.byMm()).isBetween(3.0, 11.0));
        assertThat(advice.floodLookAt()).hasValue(NOW.plus(Duration.ofMinutes(20)));
    }

    @Test
    void aPaleFullFlowWithAHighLevelAsksToLowerTheWeir() {
        Advice advice = advise(
                unit.ratedSettings(214),
                Journal.of(
                        routine(YESTERDAY, 32, 870, DarknessWord.LIGHT_TEA, FoamLookWord.RUNNY),
                        routine(NOW, 33, 900, DarknessWord.LIGHT_TEA, FoamLookWord.RUNNY),
                        everythingSound()));
        assertThat(advice.diagnosis().verdict()).isEqualTo(Verdict.TOO_WET);
        assertThat(advice.step())
                .isInstanceOfSatisfying(
                        Step.MoveWeir.class, move -> assertThat(move.byMm()).isNegative());
    }

    @Test
    void aUnitOnTargetIsLeftAlone() {
        Reading onTarget = routine(NOW, 22, 260, DarknessWord.DARK_TEA, FoamLookWord.CREAMY);
        assertThat(advise(atTarget, Journal.of(onTarget)).step())
                .as("at most a look")
                .isInstanceOfAny(Step.Hold.class, Step.Look.class);
        Advice advice = advise(atTarget, Journal.of(onTarget, everythingSound()));
        assertThat(advice.diagnosis().verdict()).isEqualTo(Verdict.ON_TARGET);
        assertThat(advice.step())
                .isInstanceOfSatisfying(
                        Step.Hold.class, hold -> assertThat(hold.reason()).isEqualTo(HoldReason.ON_TARGET));
    }

    @Test
    void noMoveBeforeTheFoamCouldSettle() {
        Instant moved = NOW.minus(Duration.ofHours(5));
        Advice advice = advise(
                unit.ratedSettings(195),
                Journal.of(
                        new WeirMove(moved, 200, false),
                        routine(NOW, 16, 60, DarknessWord.COFFEE, FoamLookWord.STIFF)));
        assertThat(advice.step()).isInstanceOfSatisfying(Step.Hold.class, hold -> {
            assertThat(hold.until()).isEqualTo(moved.plus(Duration.ofHours(24)));
            assertThat(hold.reason()).isEqualTo(HoldReason.STILL_SETTLING);
        });
    }

    @Test
    void aFoamingAgentThatFillsTheCupIsMadeSafeWithTheAirLeftOn() {
        Advice advice = advise(
                atTarget,
                Journal.of(
                        new Happening(NOW.minus(Duration.ofHours(10)), Happening.Kind.CONDITIONER),
                        Reading.of(
                                NOW,
                                new Observation.FunnelLevel(22),
                                new Observation.CupVolume(1000, 6, true),
                                new Observation.Darkness(DarknessWord.STRAW),
                                new Observation.FoamLook(FoamLookWord.STREAMING))));
        assertThat(advice.step()).isEqualTo(new Step.MakeSafe(SafeWay.LOWER_WEIR, -11, 194, 150));
        assertThat(advice.cautions()).anyMatch(each -> each.text().key().equals("advice.caution.container"));
    }

    @Test
    void anAirLineFoundCrustedIsClearedBeforeTheWeirIsTouched() {
        Advice advice = advise(
                atTarget,
                Journal.of(
                        routine(YESTERDAY, 20, 18, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
                        routine(NOW, 20, 15, DarknessWord.COFFEE, FoamLookWord.LOW_IN_NECK),
                        Reading.of(
                                NOW,
                                new Observation.Inspection(Part.AIR_LINE, Finding.BAD),
                                new Observation.Inspection(Part.NECK_AND_CUP, Finding.GOOD),
                                new Observation.LevelBeyondWeir(-40),
                                new Observation.AirFlow(110))));
        assertThat(advice.diagnosis().likeliest().cause()).isEqualTo(Cause.AIR_LINE_RESTRICTED);
        assertThat(advice.step()).isEqualTo(new Step.ServicePart(Part.AIR_LINE));
    }

    @Test
    void withoutAMeasuredCupTheCupIsAskedFor() {
        Advice advice = advise(atTarget, Journal.EMPTY);
        assertThat(advice.diagnosis().verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(advice.step()).isEqualTo(new Step.Look(LookKind.CUP_VOLUME));
    }

    @Test
    void probabilitiesAddUpAndTheSameJournalGivesTheSameAdvice() {
        Journal journal = Journal.of(routine(NOW, 12, 40, DarknessWord.DARK_TEA, FoamLookWord.STIFF));
        Advice advice = advise(unit.ratedSettings(197), journal);
        double states = advice.diagnosis().states().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(advice.diagnosis().causes()).allMatch(each -> each.probability() >= 0 && each.probability() <= 1);
        assertThat(states).isCloseTo(1, within(1e-9));
        assertThat(advise(unit.ratedSettings(197), journal)).isEqualTo(advice);
    }

    @Test
    void everyAdviceReadsAsWords() {
        PhraseBook book = PhraseBook.ENGLISH_METRIC;
        for (Part part : Part.values()) {
            assertThat(book.say(StepWords.of(new Step.ServicePart(part), NOW))).isNotBlank();
        }
        for (LookKind look : LookKind.values()) {
            assertThat(book.say(StepWords.of(new Step.Look(look), NOW))).contains("min");
        }
        for (HoldReason reason : HoldReason.values()) {
            assertThat(book.say(StepWords.of(new Step.Hold(NOW.plusSeconds(7200), reason), NOW)))
                    .contains("2 h");
        }
        for (Cause cause : Cause.values()) {
            assertThat(book.say(io.github.weirwise.report.Phrase.of(cause.nameKey())))
                    .isNotBlank();
        }
        Advice advice = advise(
                unit.ratedSettings(195), Journal.of(routine(NOW, 11, 20, DarknessWord.COFFEE, FoamLookWord.STIFF)));
        assertThat(book.say(advice.why())).contains("Seen last").contains("Likely causes");
        advice.cautions().forEach(each -> assertThat(book.say(each)).isNotBlank());
        advice.wouldChangeIt().forEach(each -> assertThat(book.say(each)).isNotBlank());
    }

    /** A weir may be marked a few millimetres over the floor; possibilities that put its crest under the floor must not stop the advice. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 8, 30, 100})
    void aWeirLowOverTheFloorGetsAdviceToo(double crestMm) {
        Column column = new Column(110, 30, 60, 100, 50, 90);
        SkimmerUnit low = new SkimmerUnit(
                "low",
                unit.columns(),
                column,
                new Weir(180, 200, 1, 300),
                unit.cupMl(),
                unit.cupDrainLitresPerHour(),
                unit.ratedFlowLitresPerHour(),
                unit.ratedAirLitresPerHour(),
                unit.traits(),
                new Target(-50, unit.target().skimmateMlPerDay(), unit.target().darknessPtCo()),
                unit.layout());
        Journal journal = Journal.of(
                routine(YESTERDAY, 20, 100, DarknessWord.COFFEE, FoamLookWord.STIFF),
                routine(NOW, 20, 60, DarknessWord.COFFEE, FoamLookWord.STIFF));
        Advice advice = Weirwise.advise(low, low.ratedSettings(crestMm), journal, NOW);
        assertThat(advice.diagnosis().causes()).isNotEmpty();
    }
}
