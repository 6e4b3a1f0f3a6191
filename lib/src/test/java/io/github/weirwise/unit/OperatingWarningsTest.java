package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each warning comes where its danger or doubt is, and only there, with the number that it names. */
class OperatingWarningsTest {
    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings wanted = unit.ratedSettings(205);

    private List<String> keys(Settings settings) {
        return OperatingPoint.of(unit, settings).warnings().stream()
                .map(warning -> warning.text().key().replace("unit.", ""))
                .toList();
    }

    private Warning told(SkimmerUnit each, Settings settings, String key) {
        return OperatingPoint.of(each, settings).warnings().stream()
                .filter(warning -> warning.text().key().equals("unit." + key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key));
    }

    private static double number(Warning warning, int place) {
        return ((Quantity) warning.text().values().get(place)).value();
    }

    @Test
    void aUnitThatRunsAsWantedSaysOnlyWhatItsStrengthRestsOn() {
        assertThat(keys(wanted)).containsExactly("loadAssumed");
    }

    @Test
    void moreAirThanTheColumnPassesIsDangerousEvenWithTheWaterLow() {
        Settings blown = wanted.withWeirCrestMm(160).withAirLitresPerHour(2000);
        assertThat(OperatingPoint.of(unit, blown).holdup()).isEqualTo(0.5);
        assertThat(told(unit, blown, "columnFlooded").severity()).isEqualTo(Severity.DANGER);
        assertThat(keys(wanted.withAirLitresPerHour(300))).doesNotContain("columnFlooded");
    }

    @Test
    void waterAtTheLipIsDangerousAndComesFirst() {
        Settings high = wanted.withWeirCrestMm(400);
        assertThat(told(unit, high, "lipFlooded").severity()).isEqualTo(Severity.DANGER);
        assertThat(OperatingPoint.of(unit, high).warnings().get(0).severity()).isEqualTo(Severity.DANGER);
    }

    @Test
    void waterInTheNeckIsToldFromTheEndOfTheFunnelUpward() {
        double inFunnel = crestFor(99.9);
        assertThat(keys(wanted.withWeirCrestMm(inFunnel))).doesNotContain("inNeck");
        assertThat(keys(wanted.withWeirCrestMm(crestFor(100.1)))).contains("inNeck");
    }

    @Test
    void waterBelowTheFunnelIsToldWithItsDistance() {
        Settings low = wanted.withWeirCrestMm(150);
        double submergenceMm = OperatingPoint.of(unit, low).submergenceMm();
        assertThat(submergenceMm).isNegative();
        assertThat(number(told(unit, low, "belowFunnel"), 0)).isCloseTo(-submergenceMm, within(1e-9));
        assertThat(keys(wanted.withWeirCrestMm(crestFor(0.1)))).doesNotContain("belowFunnel");
        assertThat(keys(wanted.withWeirCrestMm(crestFor(-0.1)))).contains("belowFunnel");
    }

    @Test
    void waterBelowTheColumnsOpeningIsWorseThanBelowTheFunnelAndSaidAlone() {
        Settings dry = wanted.withWeirCrestMm(5).withFlowLitresPerHour(100);
        assertThat(keys(dry)).contains("openingBare").doesNotContain("belowFunnel", "inNeck");
        assertThat(number(told(unit, dry, "openingBare"), 0))
                .isEqualTo(unit.column().openingMm());
        assertThat(keys(wanted.withWeirCrestMm(150))).doesNotContain("openingBare");
    }

    @Test
    void aSmallHeadIsToldWithTheDoubtAboutTheLevel() {
        Settings little = wanted.withFlowLitresPerHour(500);
        OperatingPoint point = OperatingPoint.of(unit, little);
        assertThat(point.headMm()).isLessThan(15);
        Warning small = told(unit, little, "smallHead");
        assertThat(number(small, 0)).isEqualTo(15);
        assertThat(number(small, 1)).isCloseTo(point.headBandMm().width() / 2, within(1e-9));
        assertThat(keys(wanted)).doesNotContain("smallHead", "noFlow", "drowned");
    }

    @Test
    void noFlowAndADrownedWeirAreToldInsteadOfASmallHead() {
        assertThat(keys(wanted.withFlowLitresPerHour(0))).contains("noFlow").doesNotContain("smallHead", "drowned");
        Settings drowned = wanted.withCondition(Condition.REFERENCE.withLevelBeyondWeirMm(211));
        assertThat(keys(drowned)).contains("drowned").doesNotContain("smallHead", "noFlow");
        assertThat(number(told(unit, drowned, "drowned"), 0)).isCloseTo(6, within(1e-9));
        Settings atCrest = wanted.withCondition(Condition.REFERENCE.withLevelBeyondWeirMm(204.9));
        assertThat(keys(atCrest)).doesNotContain("drowned");
    }

    @Test
    void pressureInTheCupIsToldFromAMillimetreOfWaterUpward() {
        Settings blocked = wanted.withCondition(Condition.REFERENCE.withBackPressurePa(50));
        Warning pressed = told(unit, blocked, "backPressure");
        assertThat(pressed.severity()).isEqualTo(Severity.CAUTION);
        assertThat(number(pressed, 0))
                .isCloseTo(OperatingPoint.of(unit, blocked).backPressureMm(), within(1e-9));
        assertThat(keys(wanted.withCondition(Condition.REFERENCE.withBackPressurePa(9))))
                .doesNotContain("backPressure");
        assertThat(keys(wanted.withCondition(Condition.REFERENCE.withBackPressurePa(11))))
                .contains("backPressure");
    }

    @Test
    void everyStateOfTheFoamHasItsWords() {
        assertThat(Arrays.stream(FoamState.values())
                        .map(state -> PhraseBook.ENGLISH_METRIC.say(state.words()))
                        .toList())
                .containsExactly("no foam reaches the cup", "too dry", "on target", "too wet", "flooding");
    }

    private double crestFor(double submergenceMm) {
        return WeirSetting.crestForSubmergence(
                        new SkimmerUnit(
                                unit.name(),
                                unit.columns(),
                                unit.column(),
                                new Weir(100, 100, 1, 2000),
                                unit.cupMl(),
                                unit.cupDrainLitresPerHour(),
                                unit.ratedFlowLitresPerHour(),
                                unit.ratedAirLitresPerHour(),
                                unit.traits(),
                                unit.target(),
                                unit.layout()),
                        wanted,
                        submergenceMm)
                .orElseThrow();
    }
}
