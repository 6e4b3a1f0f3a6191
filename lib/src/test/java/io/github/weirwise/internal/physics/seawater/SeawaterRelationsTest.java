package io.github.weirwise.internal.physics.seawater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.OutOfRangeException;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between numbers, whatever the numbers are: 40,000 seeded points. */
class SeawaterRelationsTest {
    private static final int POINTS = 20_000;

    @Test
    void saltMakesWaterDenserThickerTenserAndPoorerInOxygen() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < POINTS; i++) {
            double s = random.nextDouble(0, 41);
            double more = s + random.nextDouble(0.01, 1);
            double t = random.nextDouble(0, 40);
            assertThat(Seawater.density(more, t)).isGreaterThan(Seawater.density(s, t));
            assertThat(Seawater.viscosity(more, t)).isGreaterThan(Seawater.viscosity(s, t));
            assertThat(MoreSeawater.surfaceTension(more, t)).isGreaterThan(MoreSeawater.surfaceTension(s, t));
            assertThat(Seawater.oxygenSolubility(more, t)).isLessThan(Seawater.oxygenSolubility(s, t));
            assertThat(MoreSeawater.ionicStrength(more)).isGreaterThan(MoreSeawater.ionicStrength(s));
            double warmer = t + random.nextDouble(0.01, 1);
            assertThat(Seawater.viscosity(s, warmer)).isLessThan(Seawater.viscosity(s, t));
            assertThat(MoreSeawater.surfaceTension(s, warmer)).isLessThan(MoreSeawater.surfaceTension(s, t));
            assertThat(Seawater.oxygenSolubility(s, warmer)).isLessThan(Seawater.oxygenSolubility(s, t));
        }
    }

    @Test
    void instrumentsGiveBackTheSalinityTheyWereGiven() {
        SplittableRandom random = new SplittableRandom(12);
        SpecificGravity[] scales = SpecificGravity.values();
        for (int i = 0; i < POINTS; i++) {
            double s = random.nextDouble(0, 60);
            double t = random.nextDouble(5, 40);
            SpecificGravity scale = scales[random.nextInt(scales.length)];
            assertThat(scale.salinity(scale.of(s))).isCloseTo(s, within(1e-8));
            Hydrometer hydrometer = Hydrometer.ofGlass(scale);
            assertThat(hydrometer.salinity(hydrometer.reading(s, t), t)).isCloseTo(s, within(1e-8));
            double nm = random.nextDouble(400, 700);
            assertThat(RefractiveIndex.salinity(RefractiveIndex.of(s, t, nm), t, nm))
                    .isCloseTo(s, within(1e-8));
        }
    }

    @Test
    void aHydrometerReadAtItsOwnTemperatureShowsItsScale() {
        for (SpecificGravity scale : SpecificGravity.values()) {
            assertThat(Hydrometer.ofGlass(scale).reading(35, scale.sampleCelsius()))
                    .isCloseTo(scale.of(35), within(1e-12));
        }
    }

    /** Archimedes: a body that has grown displaces more, floats higher and reads higher than one that has not. */
    @Test
    void warmGlassReadsHigherByItsExpansion() {
        for (SpecificGravity scale : SpecificGravity.values()) {
            double warm = scale.sampleCelsius() + 8;
            double stiff = new Hydrometer(scale, 0).reading(35, warm);
            assertThat(Hydrometer.ofGlass(scale).reading(35, warm) / stiff - 1).isCloseTo(8 * 25e-6, within(1e-12));
        }
    }

    @Test
    void anIndexThatNoSeaWaterHasIsRefused() {
        double at100 = RefractiveIndex.of(100, 20, 589.3);
        assertThat(RefractiveIndex.salinity(at100 - 1e-6, 20, 589.3)).isBetween(99.9, 100.0);
        assertThatThrownBy(() -> RefractiveIndex.salinity(at100 + 1e-3, 20, 589.3))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> RefractiveIndex.salinity(RefractiveIndex.of(0, 20, 589.3) - 1e-4, 20, 589.3))
                .isInstanceOf(OutOfRangeException.class);
    }

    /** Common practice: an instrument for 25 degrees shows too little in warmer water. */
    @Test
    void warmWaterReadsLow() {
        Hydrometer hydrometer = Hydrometer.ofGlass(SpecificGravity.AT_25_25);
        assertThat(hydrometer.reading(35, 28)).isLessThan(hydrometer.reading(35, 25));
        assertThat(hydrometer.salinity(1.0264, 28)).isGreaterThan(36);
    }

    @Test
    void aReadingThatNoWaterGivesIsRefused() {
        assertThatThrownBy(() -> SpecificGravity.AT_25_25.salinity(0.9))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("specificGravity is 0.9");
        assertThatThrownBy(() -> RefractiveIndex.salinity(1.2, 20, 589.3)).isInstanceOf(OutOfRangeException.class);
    }
}
