package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Water that reaches the lip runs into the cup: nothing is lost there, nothing is made there, and every legal unit has an answer. */
class WaterAtTheLipTest {
    private static final double ML_PER_DAY_OF_LITRES_PER_HOUR = 24_000;

    @Test
    void aLevelOverTheLipPoursWaterIntoTheCup() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        double lip = unit.column().lipMm();
        double last = 0;
        for (double over : new double[] {-30, -10, -5, -2, 0, 2, 5, 10, 40}) {
            OperatingPoint point = OperatingPoint.of(unit, unit.ratedSettings(lip + over));
            assertThat(point.skimmateMlPerDay())
                    .as("crest %s mm over the lip", over)
                    .isGreaterThanOrEqualTo(last);
            last = point.skimmateMlPerDay();
        }
        // Crest over the lip: no other way out than the cup.
        assertThat(last)
                .isCloseTo(2200 * ML_PER_DAY_OF_LITRES_PER_HOUR, within(0.01 * 2200 * ML_PER_DAY_OF_LITRES_PER_HOUR));
    }

    @Test
    void moreThanTheRimPassesStandsOverItAndStillLeavesByTheWeir() {
        SkimmerUnit unit = FirstRoundUnits.middle();
        OperatingPoint point =
                OperatingPoint.of(unit, unit.ratedSettings(unit.column().lipMm() - 12));
        double cup = point.skimmateMlPerDay() / ML_PER_DAY_OF_LITRES_PER_HOUR;
        assertThat(cup).isBetween(100.0, 2200.0);
        assertThat(point.foamState()).isEqualTo(FoamState.FLOODING);
        // What does not go into the cup goes over the weir, at the head that belongs to it.
        double overWeir = 2200 - cup;
        double head = new io.github.weirwise.internal.physics.hydraulics.RectangularWeir(
                        0.1, 0.1, (unit.column().lipMm() - 12) / 1000)
                .head(overWeir / 3.6e6);
        assertThat(point.headMm()).isCloseTo(1000 * head, within(1.5));
    }

    @Test
    void theAmountNeverFallsWhenTheWeirRises() {
        AnyUnits any = new AnyUnits(22);
        for (int i = 0; i < 40_000; i++) {
            SkimmerUnit unit = any.unit();
            Settings settings = i % 2 == 0 ? any.settings() : any.settingsNearLip(unit);
            double higherCrest = Math.min(2000, settings.weirCrestMm() + any.spread(0.01, 200));
            OperatingPoint low = OperatingPoint.of(unit, settings);
            OperatingPoint high = OperatingPoint.of(unit, settings.withWeirCrestMm(higherCrest));
            assertThat(high.skimmateMlPerDay())
                    .as("crest %s instead of %s: %s %s", higherCrest, settings.weirCrestMm(), unit, settings)
                    .isGreaterThanOrEqualTo(low.skimmateMlPerDay() * (1 - 1e-6) - 1e-6);
        }
    }

    @Test
    void theCupNeverGetsMoreThanPassesThrough() {
        AnyUnits any = new AnyUnits(23);
        for (int i = 0; i < 40_000; i++) {
            SkimmerUnit unit = any.unit();
            Settings settings = i % 2 == 0 ? any.settings() : any.settingsNearLip(unit);
            assertThat(OperatingPoint.of(unit, settings).skimmateMlPerDay())
                    .as("%s %s", unit, settings)
                    .isBetween(0.0, settings.flowLitresPerHour() * ML_PER_DAY_OF_LITRES_PER_HOUR * (1 + 1e-9));
        }
    }

    @Test
    void everyLegalUnitHasAnAnswer() {
        AnyUnits any = new AnyUnits(24);
        for (int i = 0; i < 100_000; i++) {
            SkimmerUnit unit = any.unit();
            Settings settings = any.settings();
            OperatingPoint point = OperatingPoint.of(unit, settings);
            assertThat(Double.isFinite(point.skimmateMlPerDay() + point.columnLevelMm() + point.darknessPtCo()))
                    .as("%s %s", unit, settings)
                    .isTrue();
            WeirSetting.crestForSkimmate(unit, settings, unit.target().skimmateMlPerDay());
        }
    }
}
