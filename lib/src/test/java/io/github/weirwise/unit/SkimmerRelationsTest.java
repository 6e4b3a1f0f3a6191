package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.Warning;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold for every unit and every setting, over seeded random ones. */
class SkimmerRelationsTest {
    private static final int ANYWHERE = 60_000;
    private static final int WORKING = 20_000;

    private final Random random = new Random(20261125);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Small values as likely as large ones. */
    private double spread(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    @Test
    void everySettingOfEveryUnitHasAnAnswerWithoutNotANumber() {
        AnyUnits any = new AnyUnits(20261125);
        for (int i = 0; i < ANYWHERE; i++) {
            SkimmerUnit unit = any.unit();
            Settings settings = any.settings();
            OperatingPoint point = OperatingPoint.of(unit, settings);
            double[] numbers = {
                point.headMm(),
                point.headBandMm().low(),
                point.headBandMm().high(),
                point.clearLevelMm(),
                point.columnLevelMm(),
                point.submergenceMm(),
                point.submergenceBandMm().low(),
                point.submergenceBandMm().high(),
                point.holdup(),
                point.gasLiftMm(),
                point.foamWeightMm(),
                point.backPressureMm(),
                point.foamVolumeMl(),
                point.gasShareAtLip(),
                point.foamCreepMmPerMin(),
                point.skimmateMlPerDay(),
                point.liquidFractionAtLip(),
                point.strengthMgPerLitre(),
                point.darknessPtCo(),
                point.airLitresPerHour()
            };
            assertThat(Arrays.stream(numbers).allMatch(Double::isFinite))
                    .as("%s %s %s", unit, settings, point)
                    .isTrue();
            assertThat(point.skimmateMlPerDay()).isNotNegative();
            assertThat(point.holdup()).isBetween(0.0, 1.0);
            assertThat(point.gasShareAtLip()).isBetween(0.0, 1.0);
            List<Warning> warnings = point.warnings();
            for (int w = 1; w < warnings.size(); w++) {
                assertThat(warnings.get(w).severity())
                        .isLessThanOrEqualTo(warnings.get(w - 1).severity());
            }
        }
    }

    /** One of the default units with its own neck and bubbles, near its wanted level. */
    private SkimmerUnit workingUnit() {
        SkimmerUnit base = FirstRoundUnits.units().get(random.nextInt(3));
        FoamTraits used = base.traits();
        return base.withTraits(new FoamTraits(
                used.meanLifeSeconds() * between(0.95, 1.1),
                between(1.1, 2),
                between(0.6, 1),
                between(1.6, 3),
                used.filmMobility(),
                between(1.5, 3),
                between(1.75, 3),
                used.meanFoamLiquidFraction(),
                between(0, 0.5),
                0,
                random.nextBoolean() ? Optional.empty() : Optional.of(LipAnswer.USUAL)));
    }

    private Settings workingSettings(SkimmerUnit unit) {
        double crest = WeirSetting.crestForSubmergence(
                        FirstRoundUnits.units().get(index(unit)),
                        unit.ratedSettings(200),
                        unit.target().submergenceMm())
                .orElseThrow();
        return unit.ratedSettings(crest + between(-6, 8))
                .withFlowLitresPerHour(unit.ratedFlowLitresPerHour() * between(0.7, 1.2))
                .withAirLitresPerHour(unit.ratedAirLitresPerHour() * between(0.9, 1.1))
                .withPracticalSalinity(between(25, 38))
                .withWaterCelsius(between(20, 30));
    }

    private static int index(SkimmerUnit unit) {
        return FirstRoundUnits.units().stream().map(SkimmerUnit::name).toList().indexOf(unit.name());
    }

    @Test
    void aHigherCrestOrMoreFlowRaisesTheLevelAndWetsTheFoam() {
        for (int i = 0; i < WORKING; i++) {
            SkimmerUnit unit = workingUnit();
            Settings settings = workingSettings(unit);
            OperatingPoint before = OperatingPoint.of(unit, settings);
            OperatingPoint higher =
                    OperatingPoint.of(unit, settings.withWeirCrestMm(settings.weirCrestMm() + between(0.1, 5)));
            OperatingPoint swifter = OperatingPoint.of(
                    unit, settings.withFlowLitresPerHour(settings.flowLitresPerHour() * between(1.01, 1.2)));
            for (OperatingPoint after : List.of(higher, swifter)) {
                assertThat(after.submergenceMm()).isGreaterThan(before.submergenceMm());
                assertThat(after.skimmateMlPerDay()).isGreaterThanOrEqualTo(before.skimmateMlPerDay());
                assertThat(after.liquidFractionAtLip()).isGreaterThanOrEqualTo(before.liquidFractionAtLip());
                assertThat(after.darknessPtCo()).isLessThanOrEqualTo(before.darknessPtCo() + 1e-6);
            }
        }
    }

    @Test
    void dirtOilPressureAndAWeakPumpDryTheFoamAndAFoamingAgentWetsIt() {
        for (int i = 0; i < WORKING; i++) {
            SkimmerUnit unit = workingUnit();
            Settings settings = workingSettings(unit);
            Condition clean = settings.condition();
            double share = between(0.02, 0.5);
            double amount = OperatingPoint.of(unit, settings).skimmateMlPerDay();
            for (Condition worse : List.of(
                    clean.withNeckFouling(share),
                    clean.withFilmBreaker(share),
                    clean.withBackPressurePa(100 * share),
                    clean.withSkimmableMgPerLitre(2 * (1 - share)))) {
                assertThat(OperatingPoint.of(unit, settings.withCondition(worse))
                                .skimmateMlPerDay())
                        .isLessThanOrEqualTo(amount);
            }
            assertThat(OperatingPoint.of(unit, settings.withCondition(clean.withFoamBooster(share)))
                            .skimmateMlPerDay())
                    .isGreaterThanOrEqualTo(amount);
        }
    }

    @Test
    void pressureBalancesAtTheColumnsOpening() {
        for (int i = 0; i < WORKING; i++) {
            SkimmerUnit unit = workingUnit();
            OperatingPoint point = OperatingPoint.of(unit, workingSettings(unit));
            double outside = point.clearLevelMm() - unit.column().openingMm();
            double inside = (1 - point.holdup())
                    * (point.columnLevelMm() - unit.column().openingMm());
            assertThat(inside + point.foamWeightMm() + point.backPressureMm()).isCloseTo(outside, within(1e-6));
            double level = point.clearLevelMm()
                    + point.gasLiftMm()
                    - (point.foamWeightMm() + point.backPressureMm()) / (1 - point.holdup());
            assertThat(level).isCloseTo(point.columnLevelMm(), within(1e-6));
        }
    }

    @Test
    void theWeirSettingForALevelOrAnAmountGivesThatLevelOrAmount() {
        int found = 0;
        for (int i = 0; i < WORKING / 4; i++) {
            SkimmerUnit unit = workingUnit();
            Settings settings = workingSettings(unit);
            double wantedMm = between(5, 40);
            OptionalDouble crest = WeirSetting.crestForSubmergence(unit, settings, wantedMm);
            assertThat(crest).isPresent();
            assertThat(OperatingPoint.of(unit, settings.withWeirCrestMm(crest.getAsDouble()))
                            .submergenceMm())
                    .isCloseTo(wantedMm, within(1e-4));
            double wanted = unit.target().skimmateMlPerDay() * spread(0.3, 3);
            OptionalDouble forAmount = WeirSetting.crestForSkimmate(unit, settings, wanted);
            if (forAmount.isPresent()) {
                found++;
                assertThat(OperatingPoint.of(unit, settings.withWeirCrestMm(forAmount.getAsDouble()))
                                        .skimmateMlPerDay()
                                / wanted)
                        .isCloseTo(1, within(1e-4));
            }
        }
        assertThat(found).isGreaterThan(WORKING / 8);
    }

    @Test
    void withoutAirNothingIsLiftedAndNothingComesOver() {
        for (int i = 0; i < 1000; i++) {
            SkimmerUnit unit = workingUnit();
            OperatingPoint point = OperatingPoint.of(unit, workingSettings(unit).withAirLitresPerHour(0));
            assertThat(point.holdup()).isZero();
            assertThat(point.gasLiftMm()).isZero();
            assertThat(point.skimmateMlPerDay()).isZero();
            assertThat(point.foamState()).isEqualTo(FoamState.NO_FOAM);
        }
    }
}
