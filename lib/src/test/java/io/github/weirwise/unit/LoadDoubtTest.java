package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.foam.BubbleUptake;
import io.github.weirwise.internal.physics.foam.GatheredLoad;
import io.github.weirwise.internal.physics.seawater.Seawater;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The result itself says that the strength of the skimmate rests on an assumption, and by how much it may be too high. */
class LoadDoubtTest {
    private static LoadDoubt doubt(SkimmerUnit unit, Settings settings) {
        SteadyInputs inputs = SteadyInputs.of(unit, settings);
        return LoadDoubt.of(unit, settings, inputs, new SteadyLaw(unit).at(inputs));
    }

    private static Settings wanted(SkimmerUnit unit) {
        return unit.ratedSettings(WeirSetting.crestForSubmergence(
                        unit, unit.ratedSettings(200), unit.target().submergenceMm())
                .orElseThrow());
    }

    private static Optional<Warning> told(SkimmerUnit unit, Settings settings) {
        return OperatingPoint.of(unit, settings).warnings().stream()
                .filter(warning -> warning.text().key().equals("unit.loadAssumed"))
                .findFirst();
    }

    @Test
    void everyDefaultUnitSaysIt() {
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            Warning warning = told(unit, wanted(unit)).orElseThrow();
            assertThat(warning.severity()).isEqualTo(Severity.NOTE);
            assertThat(PhraseBook.ENGLISH_METRIC.say(warning.text()))
                    .contains("carries 50 %", "may be removed than stated");
        }
    }

    /** The share is the law of transport in seconds, from above: k c t over the full load. */
    @Test
    void theShareIsAnUpperLimitOfTheLawOfTransport() {
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            Settings at = wanted(unit);
            SteadyInputs inputs = SteadyInputs.of(unit, at);
            double speed = inputs.terminalSpeedMPerS();
            double way = new SteadyLaw(unit).at(inputs).columnLevelM()
                    - unit.column().openingMm() / 1000;
            double transfer = BubbleUptake.transferSpeed(
                    speed,
                    unit.traits().freshBubbleMm() / 1000,
                    Seawater.viscosity(35, 25) / Seawater.density(35, 25),
                    BubbleUptake.PROTEIN_DIFFUSIVITY);
            double lawful = new GatheredLoad(SkimmateStrength.ADSORPTION, transfer).load(0.002, way / speed)
                    / SkimmateStrength.ADSORPTION.load(0.002);
            double share = doubt(unit, at).transportShare();
            assertThat(share).isBetween(lawful, 1.1 * lawful);
            assertThat(doubt(unit, at).factor()).isCloseTo(SkimmateStrength.COLLECTED_SHARE / share, within(1e-9));
        }
    }

    @Test
    void dirtierWaterLoadsABubbleSoonerAndTheNoteGoes() {
        SkimmerUnit unit = FirstRoundUnits.large();
        Settings at = wanted(unit);
        double before = 0;
        for (double load : new double[] {0.5, 2, 8, 30, 120}) {
            double share = doubt(unit, at.withCondition(Condition.REFERENCE.withSkimmableMgPerLitre(load)))
                    .transportShare();
            assertThat(share).isGreaterThan(before);
            before = share;
        }
        Settings dirty = at.withCondition(Condition.REFERENCE.withSkimmableMgPerLitre(120));
        assertThat(doubt(unit, dirty).worthTelling()).isFalse();
        assertThat(told(unit, dirty)).isEmpty();
    }

    @Test
    void withoutSkimmateOrLoadThereIsNothingToDoubt() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        Settings at = wanted(unit);
        assertThat(told(unit, at.withAirLitresPerHour(0))).isEmpty();
        assertThat(told(unit, at.withCondition(Condition.REFERENCE.withSkimmableMgPerLitre(0))))
                .isEmpty();
        assertThat(doubt(unit, at.withAirLitresPerHour(0)).factor()).isEqualTo(1);
    }
}
