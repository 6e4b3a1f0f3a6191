package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: the three default units against a table computed beforehand by an independent program from the same
 * equations with density 1023 kg/m3 and viscosity 0.96 mPa s. It pins the closures; it proves nothing about real units.
 */
class DefaultUnitsTest {
    record Row(
            SkimmerUnit unit,
            double crestMm,
            double headMm,
            double[] atMinus4Minus2Plus2Plus4Plus10,
            double lessFlowLevelMm,
            double lessFlow,
            double lessAirLevelMm,
            double lessAir) {
        @Override
        public String toString() {
            return unit.name();
        }

        double crest() {
            Settings settings = unit.ratedSettings(crestMm);
            return WeirSetting.crestForSubmergence(unit, settings, unit.target().submergenceMm())
                    .orElseThrow();
        }

        OperatingPoint at(double crestMm) {
            return OperatingPoint.of(unit, unit.ratedSettings(crestMm));
        }
    }

    static Stream<Row> rows() {
        return Stream.of(
                new Row(
                        FirstRoundUnits.small(),
                        162,
                        17,
                        new double[] {.43, .67, 1.46, 2.08, 5.3},
                        -2.5,
                        .61,
                        -1.5,
                        .025),
                new Row(
                        FirstRoundUnits.middle(),
                        205,
                        22,
                        new double[] {.52, .73, 1.36, 1.81, 4.0},
                        -3.3,
                        .60,
                        -2.2,
                        .019),
                new Row(
                        FirstRoundUnits.large(),
                        249,
                        25,
                        new double[] {.61, .78, 1.27, 1.59, 3.0},
                        -3.7,
                        .64,
                        -3.0,
                        .019));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theWantedSubmergenceAsksForTheTabledCrestAndGivesTheWantedAmount(Row row) {
        double crest = row.crest();
        assertThat(crest).isCloseTo(row.crestMm, within(0.6));
        OperatingPoint point = row.at(crest);
        assertThat(point.headMm()).isCloseTo(row.headMm, within(0.6));
        assertThat(point.skimmateMlPerDay()).isCloseTo(row.unit.target().skimmateMlPerDay(), withinPercentage(5));
        assertThat(point.foamState()).isEqualTo(FoamState.ON_TARGET);
        assertThat(point.foamCreepMmPerMin()).isBetween(25.0, 33.0);
        assertThat(point.liquidFractionAtLip()).isCloseTo(0.006, within(0.001));
        assertThat(point.gasShareAtLip()).isCloseTo(0.024, within(0.004));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void skimmateFollowsTheWeirAsTabled(Row row) {
        double crest = row.crest();
        double target = row.at(crest).skimmateMlPerDay();
        double[] moves = {-4, -2, 2, 4, 10};
        for (int i = 0; i < moves.length; i++) {
            assertThat(row.at(crest + moves[i]).skimmateMlPerDay() / target)
                    .as("%s mm of weir", moves[i])
                    .isCloseTo(row.atMinus4Minus2Plus2Plus4Plus10[i], withinPercentage(5));
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void lessFlowLowersTheLevelAndDriesTheFoamAsTabled(Row row) {
        Settings settings = row.unit.ratedSettings(row.crest());
        OperatingPoint before = OperatingPoint.of(row.unit, settings);
        OperatingPoint after =
                OperatingPoint.of(row.unit, settings.withFlowLitresPerHour(0.8 * settings.flowLitresPerHour()));
        assertThat(after.submergenceMm() - before.submergenceMm()).isCloseTo(row.lessFlowLevelMm, withinPercentage(5));
        assertThat(after.skimmateMlPerDay() / before.skimmateMlPerDay()).isCloseTo(row.lessFlow, withinPercentage(5));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void lessAirLooksDryAlthoughTheWeirIsRight(Row row) {
        Settings settings = row.unit.ratedSettings(row.crest());
        OperatingPoint before = OperatingPoint.of(row.unit, settings);
        OperatingPoint after =
                OperatingPoint.of(row.unit, settings.withAirLitresPerHour(0.8 * settings.airLitresPerHour()));
        assertThat(after.submergenceMm() - before.submergenceMm()).isCloseTo(row.lessAirLevelMm, withinPercentage(5));
        assertThat(after.skimmateMlPerDay() / before.skimmateMlPerDay()).isCloseTo(row.lessAir, within(0.0015));
        assertThat(after.foamState()).isIn(FoamState.TOO_DRY, FoamState.NO_FOAM);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void tenPercentOfFoamLifeIsAFactorOfTwoToThreeInSkimmate(Row row) {
        double crest = row.crest();
        double life = row.unit.traits().meanLifeSeconds();
        double target = row.at(crest).skimmateMlPerDay();
        SkimmerUnit shorter = row.unit.withTraits(row.unit.traits().withMeanLifeSeconds(0.9 * life));
        SkimmerUnit longer = row.unit.withTraits(row.unit.traits().withMeanLifeSeconds(1.1 * life));
        Settings settings = row.unit.ratedSettings(crest);
        assertThat(OperatingPoint.of(shorter, settings).skimmateMlPerDay() / target)
                .isCloseTo(0.3, withinPercentage(6));
        assertThat(OperatingPoint.of(longer, settings).skimmateMlPerDay() / target)
                .isCloseTo(2.45, withinPercentage(6));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void drierIsDarker(Row row) {
        double crest = row.crest();
        assertThat(row.at(crest - 4).darknessPtCo()).isGreaterThan(row.at(crest).darknessPtCo());
        assertThat(row.at(crest + 4).darknessPtCo()).isLessThan(row.at(crest).darknessPtCo());
        assertThat(row.unit.target().darknessPtCo().contains(row.at(crest).darknessPtCo()))
                .as("darkness %s", row.at(crest).darknessPtCo())
                .isTrue();
    }
}
