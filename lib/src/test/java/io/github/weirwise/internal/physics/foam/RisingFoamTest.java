package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.foam.RisenFoam.Equilibrium;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RisingFoamTest {
    /** Stevenson 2007 with K = 39.24 mm/s (bubble radius 0.5 mm, m = 0.016), worked separately; mm/s. */
    @ParameterizedTest
    @CsvSource({"2, 0.026913, 0.026893", "5, 0.074357, 0.184694", "10, 0.198205, 0.930464"})
    void equilibriumOfARisingFoam(double gas, double eps, double flux) {
        Equilibrium foam = RisenFoam.equilibrium(gas / 1000, 0.03924);
        assertThat(foam.liquidFraction()).isCloseTo(eps, within(1e-6));
        assertThat(foam.liquidFluxMPerS() * 1000).isCloseTo(flux, within(2e-6));
        assertThat(foam.flooded()).isFalse();
    }

    @Test
    void theLimitIsEightTwentySeventhsOfK() {
        assertThat(RisenFoam.floodingGasFlux(0.03924, 2) * 1000).isCloseTo(11.6267, within(1e-4));
        Equilibrium past = RisenFoam.equilibrium(0.012, 0.03924);
        assertThat(past.flooded()).isTrue();
        assertThat(past.liquidFraction()).isEqualTo(1.0 / 3);
        assertThat(past.liquidFluxMPerS()).isPositive();
        assertThat(RisenFoam.equilibrium(0.0116, 0.03924).flooded()).isFalse();
    }

    @Test
    void noNeighbourPassesMoreForAnyExponent() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 30_000; i++) {
            double n = i % 3 == 0 ? 2 : random.nextDouble(1.3, 3);
            double k = Math.exp(random.nextDouble(-9, 0));
            double gas = random.nextDouble(0, 1.2) * RisenFoam.floodingGasFlux(k, n);
            Equilibrium foam = RisenFoam.equilibrium(gas, k, n);
            double eps = foam.liquidFraction();
            assertThat(eps).isBetween(0.0, (n - 1) / (n + 1) + 1e-12);
            if (!foam.flooded()) {
                double step = 1e-4 * eps;
                assertThat(foam.liquidFluxMPerS())
                        .isGreaterThanOrEqualTo(RisenFoam.liquidFlux(gas, k, n, eps - step))
                        .isGreaterThanOrEqualTo(RisenFoam.liquidFlux(gas, k, n, eps + step) - 1e-12 * k);
            }
        }
    }

    /** Plateau borders with surfaces at rest give m = 0.00326, Koehler, Hilgenfeldt and Stone 2000. */
    @Test
    void drainageSpeed() {
        assertThat(Drainage.speed(1000, 1e-3, 0.0005, 0.016)).isCloseTo(0.03924, within(2e-5));
        assertThat(Drainage.RIGID_FILMS).isCloseTo(0.00326, within(0.0001));
    }
}
