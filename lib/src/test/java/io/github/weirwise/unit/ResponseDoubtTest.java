package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The fast form says how far it may be from the full foam column, and the column keeps to that. */
class ResponseDoubtTest {
    private static final String KEY = "unit.farFromTarget";

    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings wanted = unit.ratedSettings(WeirSetting.crestForSubmergence(
                    unit, unit.ratedSettings(200), unit.target().submergenceMm())
            .orElseThrow());

    private static Optional<Warning> told(SkimmerUnit unit, Settings settings) {
        List<Warning> warnings = OperatingPoint.of(unit, settings).warnings();
        return warnings.stream()
                .filter(warning -> warning.text().key().equals(KEY))
                .findFirst();
    }

    private double factor(Settings settings) {
        SteadyInputs inputs = SteadyInputs.of(unit, settings);
        return ResponseDoubt.of(unit, inputs, new SteadyLaw(unit).at(inputs)).factor();
    }

    @Test
    void nothingIsToldWhereTheUnitGivesItsWantedAmount() {
        assertThat(told(unit, wanted)).isEmpty();
        assertThat(factor(wanted)).isLessThan(1.05);
    }

    @Test
    void theDoubtGrowsWithTheDistanceAndComesAfterGraverWarnings() {
        double before = 1;
        for (int mm = 1; mm <= 10; mm++) {
            double factor = factor(wanted.withWeirCrestMm(wanted.weirCrestMm() - mm));
            assertThat(factor).isGreaterThan(before);
            before = factor;
        }
        Settings drowned = wanted.withWeirCrestMm(wanted.weirCrestMm() - 4)
                .withCondition(Condition.REFERENCE.withBackPressurePa(50));
        List<Warning> warnings = OperatingPoint.of(unit, drowned).warnings();
        assertThat(warnings).extracting(Warning::severity).isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(warnings.get(0).severity()).isNotEqualTo(Severity.NOTE);
        Warning told = told(unit, drowned).orElseThrow();
        assertThat(told.severity()).isEqualTo(Severity.NOTE);
        assertThat(PhraseBook.ENGLISH_METRIC.say(told.text())).contains("within a factor of");
    }

    @Test
    void noFoamAndFloodsAreStatesAndNotAmounts() {
        assertThat(told(unit, wanted.withAirLitresPerHour(60))).isEmpty();
        assertThat(told(unit, wanted.withWeirCrestMm(420))).isEmpty();
    }

    @Test
    void theColumnKeepsWithinTheFactorForEveryDefaultUnit() {
        for (SkimmerUnit each : FirstRoundUnits.units()) {
            Settings at = each.ratedSettings(WeirSetting.crestForSubmergence(
                            each, each.ratedSettings(200), each.target().submergenceMm())
                    .orElseThrow());
            SkimmerUnit fitted = ReferenceColumn.withFittedLife(each, at, ColumnAssumptions.DEFAULT);
            for (Settings moved : List.of(
                    at.withWeirCrestMm(at.weirCrestMm() - 4),
                    at.withWeirCrestMm(at.weirCrestMm() + 6),
                    at.withAirLitresPerHour(0.92 * at.airLitresPerHour()),
                    at.withAirLitresPerHour(1.08 * at.airLitresPerHour()),
                    at.withFlowLitresPerHour(0.8 * at.flowLitresPerHour()))) {
                SteadyInputs inputs = SteadyInputs.of(each, moved);
                double factor = ResponseDoubt.of(each, inputs, new SteadyLaw(each).at(inputs))
                        .factor();
                double column = ReferenceColumn.of(fitted, moved).skimmateMlPerDay();
                double fast = OperatingPoint.of(each, moved).skimmateMlPerDay();
                assertThat(Math.abs(Math.log(column / fast)))
                        .as("%s %s", each.name(), moved)
                        .isBetween(Math.log(1.1), Math.log(factor));
                assertThat(told(each, moved)).isPresent();
            }
        }
    }
}
