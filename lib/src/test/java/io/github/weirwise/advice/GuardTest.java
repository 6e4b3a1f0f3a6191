package io.github.weirwise.advice;

import static io.github.weirwise.advice.Situations.NOW;
import static io.github.weirwise.advice.Situations.UNIT;
import static io.github.weirwise.advice.Situations.hoursAgo;
import static io.github.weirwise.advice.Situations.onTarget;
import static io.github.weirwise.advice.Situations.scene;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The parts of the guard, one by one; whole journals stand in the grid ({@code GuardGridTest}). */
class GuardTest {
    private static final Step.Hold QUIET = new Step.Hold(NOW.plusSeconds(86400), HoldReason.ON_TARGET);
    private static final Optional<Duration> LASTS = Optional.empty();

    private static FloodSeen flood(double mlPerDay, double levelMm) {
        return new FloodSeen(
                NOW,
                OptionalDouble.of(mlPerDay),
                OptionalDouble.of(levelMm),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private static Expectation expects(double low, double high) {
        return new Expectation(new Range(20, 24), new Range(low, high), new Range(700, 5000), 0.5);
    }

    private static Reading inspected(double hoursAgo, Part part, Finding finding) {
        return Reading.of(hoursAgo(hoursAgo), new Observation.Inspection(part, finding));
    }

    private static Step checked(Step step, JournalEntry... entries) {
        return new AnswerGuard(scene(205, entries)).checked(step, expects(200, 300));
    }

    private static List<String> keys(List<Phrase> phrases) {
        return phrases.stream().map(Phrase::key).toList();
    }

    @Test
    void theMoreRunsOverTheFurtherTheWeirGoesDownAndADrainThatCopesKeepsItSmall() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 1000; i++) {
            double ml = Math.exp(random.nextDouble(0, 14));
            double level = random.nextDouble(-20, 80);
            int mm = Lowering.wantedMm(UNIT, flood(ml, level), 0);
            assertThat(mm).isBetween(10, 30);
            assertThat(Lowering.wantedMm(UNIT, flood(1.5 * ml, level), 0)).isGreaterThanOrEqualTo(mm);
            assertThat(Lowering.wantedMm(UNIT, flood(ml, level + 5), 0)).isGreaterThanOrEqualTo(mm);
            assertThat(Lowering.wantedMm(UNIT, flood(ml, level), ml)).isBetween(10, 12);
        }
    }

    /** By the stated factor of 1.2 a millimetre: 20 mm down leave a fortieth of 24,000 mL/day, the upper end of the band. */
    @Test
    void aLitreInAnHourAsksForTwentyOneMillimetres() {
        assertThat(Lowering.wantedMm(UNIT, flood(24000, 22), 0)).isEqualTo(21);
        assertThat(600 * Math.pow(Lowering.PER_MM, 20)).isLessThan(24000);
        assertThat(600 * Math.pow(Lowering.PER_MM, 21)).isGreaterThan(24000);
    }

    @Test
    void aServiceOfAPartThatNobodyLookedAtBecomesALook() {
        Step pump = new Step.ServicePart(Part.INJECTOR_PUMP);
        assertThat(checked(pump, onTarget(NOW))).isEqualTo(new Step.Look(LookKind.INJECTOR_PUMP));
        // What is due every week and of which nothing is known needs no look (common practice).
        Step service = new Step.ServicePart(Part.NECK_AND_CUP);
        assertThat(checked(service, onTarget(NOW))).isEqualTo(service);
        assertThat(checked(service, inspected(5, Part.NECK_AND_CUP, Finding.BAD)))
                .isEqualTo(service);
        assertThat(checked(service, inspected(5, Part.NECK_AND_CUP, Finding.DOUBTFUL)))
                .isEqualTo(service);
        assertThat(checked(
                        service,
                        inspected(5, Part.NECK_AND_CUP, Finding.BAD),
                        new Service(hoursAgo(4), Part.NECK_AND_CUP)))
                .isEqualTo(new Step.Look(LookKind.NECK_AND_CUP));
    }

    /** Whoever reads an amount is not sent away for longer than the empty cup lasts at it, nor at the most that is expected. */
    @Test
    void noWaitOutlastsTheCup() {
        Step week = new Step.Hold(NOW.plus(Duration.ofDays(7)), HoldReason.ON_TARGET);
        Reading twoDays = Reading.of(NOW, new Observation.CupVolume(0.5 * UNIT.cupMl(), 24, false));
        assertThat(checked(week, twoDays))
                .isEqualTo(new Step.Hold(NOW.plus(Duration.ofHours(47)), HoldReason.ON_TARGET));
        Reading hours = Reading.of(NOW, new Observation.CupVolume(0.5 * UNIT.cupMl(), 2, false));
        assertThat(checked(week, hours)).isEqualTo(new Step.Hold(NOW.plus(Duration.ofHours(3)), HoldReason.ON_TARGET));
        Duration most = Duration.ofHours((long) Math.floor(24 * UNIT.cupMl() / 300));
        assertThat(checked(week, Reading.of(NOW, new Observation.FunnelLevel(22))))
                .isEqualTo(new Step.Hold(
                        most.compareTo(Duration.ofDays(7)) < 0 ? NOW.plus(most) : NOW.plus(Duration.ofDays(7)),
                        HoldReason.ON_TARGET));
    }

    @Test
    void upkeepThatIsDueNeedsNoLook() {
        Step service = new Step.ServicePart(Part.NECK_AND_CUP);
        assertThat(checked(service, new Service(hoursAgo(24 * 8), Part.NECK_AND_CUP)))
                .isEqualTo(service);
        assertThat(checked(service, new Service(hoursAgo(24 * 6), Part.NECK_AND_CUP)))
                .isEqualTo(new Step.Look(LookKind.NECK_AND_CUP));
    }

    @Test
    void aMeasurementFarOffMayBeActedOnAtOnce() {
        Step pump = new Step.ServicePart(Part.RETURN_PUMP);
        assertThat(checked(pump, Reading.of(NOW, new Observation.ReturnFlow(1450))))
                .isEqualTo(pump);
        assertThat(checked(pump, Reading.of(NOW, new Observation.ReturnFlow(2150))))
                .isEqualTo(new Step.Look(LookKind.RETURN_PUMP));
        Step salt = new Step.ServicePart(Part.SALT_MIX);
        assertThat(checked(salt, onTarget(NOW))).isEqualTo(new Step.Look(LookKind.SALINITY));
        assertThat(checked(salt, Reading.of(NOW, new Observation.Salinity(31)))).isEqualTo(salt);
    }

    @Test
    void noWeirMoveHidesAPartThatWasSeenBadAndSeveralAreOneVisitsWork() {
        Step move = new Step.MoveWeir(3, 208, false);
        assertThat(checked(move, onTarget(NOW))).isEqualTo(move);
        assertThat(checked(move, inspected(5, Part.FILTER_PAD, Finding.BAD)))
                .isEqualTo(new Step.ServicePart(Part.FILTER_PAD));
        assertThat(checked(
                        move, inspected(5, Part.FILTER_PAD, Finding.BAD), inspected(5, Part.NECK_AND_CUP, Finding.BAD)))
                .isEqualTo(new Step.ServicePart(Part.NECK_AND_CUP, List.of(Part.FILTER_PAD)));
    }

    @Test
    void aHoldThatExpectsACupfulBeforeMorningLooksAtTheFoamUnlessItWasJustSeen() {
        AnswerGuard guard = new AnswerGuard(scene(205, new WeirMove(hoursAgo(0.1), 250, false)));
        Step.Hold settling = new Step.Hold(NOW.plusSeconds(80000), HoldReason.STILL_SETTLING);
        assertThat(guard.checked(settling, expects(4000, 130000))).isEqualTo(new Step.Look(LookKind.FOAM_LOOK));
        assertThat(guard.checked(settling, expects(100, 130000))).isEqualTo(settling);
        assertThat(new AnswerGuard(scene(205, onTarget(NOW))).checked(settling, expects(4000, 130000)))
                .isEqualTo(settling);
        assertThat(guard.fullBefore(Duration.ofDays(1), expects(100, 2000))).hasValue(Duration.ofHours(12));
        assertThat(guard.fullBefore(Duration.ofDays(1), expects(100, 900))).isEmpty();
    }

    @Test
    void aLevelThatAStepExplainsIsNotOff() {
        Instant[] days = {hoursAgo(72), hoursAgo(48), hoursAgo(24)};
        JournalEntry[] high = new JournalEntry[3];
        for (int i = 0; i < 3; i++) {
            high[i] = Reading.of(days[i], new Observation.FunnelLevel(35));
        }
        assertThat(LevelOff.in(scene(205, high))).isPresent();
        assertThat(LevelOff.in(scene(217, high))).isEmpty();
        assertThat(checked(QUIET, high)).isEqualTo(new Step.Look(LookKind.LEVEL_BEYOND_WEIR));
        JournalEntry[] looked = {
            high[0], high[1], Reading.of(hoursAgo(30), new Observation.LevelBeyondWeir(-30)), high[2]
        };
        assertThat(checked(QUIET, looked)).isEqualTo(QUIET);
    }

    @ParameterizedTest
    @EnumSource
    void handsInWaterMeanThePlugOutForLooksAsForWork(LookKind kind) {
        List<Warning> cautions = new Cautions(scene(205)).of(new Step.Look(kind), LASTS);
        boolean danger = cautions.get(0).severity() == Severity.DANGER;
        assertThat(danger).isEqualTo(kind.handsInWater());
        assertThat(cautions.stream().anyMatch(each -> each.text().key().equals("advice.caution.restart")))
                .isEqualTo(kind.handsInWater());
    }

    @ParameterizedTest
    @EnumSource
    void everyLookSaysWhatItsResultsLeadTo(LookKind kind) {
        List<Phrase> lines = new ChangeOfMind(scene(205)).lines(new Step.Look(kind), Optional.empty());
        assertThat(lines)
                .isNotEmpty()
                .allSatisfy(
                        line -> assertThat(PhraseBook.ENGLISH_METRIC.say(line)).hasSizeBetween(20, 160));
    }

    @Test
    void afterAMoveHalfOfItGoesBackWhenTheBandIsPassed() {
        ChangeOfMind mind = new ChangeOfMind(scene(205));
        List<Phrase> up = mind.lines(new Step.MoveWeir(6, 211, false), Optional.empty());
        assertThat(keys(up)).containsExactly("advice.mind.raisedTooFar", "advice.mind.raisedInVain");
        assertThat(up.get(0).values())
                .containsExactly(Quantity.of(600, Unit.MILLILITRE_PER_DAY), Quantity.of(3, Unit.MILLIMETRE));
        List<Phrase> down = mind.lines(new Step.MoveWeir(-6, 199, false), Optional.empty());
        assertThat(keys(down)).containsExactly("advice.mind.loweredTooFar", "advice.mind.loweredInVain");
        assertThat(down.get(0).values().get(0)).isEqualTo(Quantity.of(100, Unit.MILLILITRE_PER_DAY));
    }

    @Test
    void whoeverAsksTooEarlyOrTooLateIsToldWhenToLook() {
        LookAgain look = new LookAgain(Clocks.COMMON_PRACTICE, NOW);
        assertThat(look.floodLookAt(QUIET, LASTS)).isEmpty();
        assertThat(look.floodLookAt(QUIET, Optional.of(Duration.ofHours(5)))).hasValue(NOW.plusSeconds(5 * 3600));
        assertThat(look.floodLookAt(new Step.MoveWeir(2, 207, false), Optional.of(Duration.ofHours(5))))
                .hasValue(NOW.plusSeconds(1200));
        assertThat(look.floodLookAt(new Step.MoveWeir(2, 207, false), Optional.of(Duration.ofMinutes(9))))
                .hasValue(NOW.plusSeconds(540));
        assertThat(new LookAgain(Clocks.COMMON_PRACTICE, Instant.MAX).judgeAt(new Step.MoveWeir(2, 207, false)))
                .isEqualTo(Instant.MAX);
    }

    @Test
    void theFirstRuleThatAppliesSpeaksAndAQuietJournalHasNone() {
        assertThat(Guard.of(scene(205, onTarget(hoursAgo(24)), onTarget(NOW)))).isEmpty();
        assertThat(Guard.of(scene(205))).isEmpty();
        Reading streaming = Reading.of(NOW, new Observation.FoamLook(FoamLookWord.STREAMING));
        assertThat(Guard.of(scene(2000, streaming))).hasValueSatisfying(guard -> {
            assertThat(guard.rule()).isEqualTo(GuardRule.FLOOD_SEEN);
            assertThat(((Step.MakeSafe) guard.step()).toCrestMm()).isLessThan(270);
        });
        SkimmerUnit drained = UNIT.withCupDrainLitresPerHour(100);
        GuardScene scene = scene(205, streaming);
        GuardScene withDrain = GuardScene.of(drained, scene.start(), Journal.of(streaming), scene.now(), scene.looks());
        assertThat(((Step.MakeSafe) Guard.of(withDrain).orElseThrow().step()).byMm())
                .isEqualTo(-10);
    }
}
