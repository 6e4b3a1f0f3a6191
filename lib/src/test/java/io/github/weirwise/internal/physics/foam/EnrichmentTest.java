package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EnrichmentTest {
    /** Lemlich's simple mode, worked separately. */
    @ParameterizedTest
    @CsvSource({"2e-6, 0.02, 0.01, 59.8", "2e-6, 0.1, 0.01, 11.8", "1e-6, 0.05, 0.002, 58"})
    void simpleMode(double load, double eps, double bulk, double expected) {
        assertThat(Enrichment.simpleMode(bulk, 0.001, load, eps)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void byFlowsAndByLiquidFractionAreTheSame() {
        double eps = 0.03;
        double byFlows = Enrichment.concentration(0.01, 0.001, 2e-6, (1 - eps) * 1e-5, eps * 1e-5);
        assertThat(byFlows / 0.01).isCloseTo(Enrichment.simpleMode(0.01, 0.001, 2e-6, eps), within(1e-9));
    }

    @Test
    void refluxLiesBetweenNothingAndAllThatEntered() {
        double none = Enrichment.concentrationWithReflux(0.01, 0.001, 0.001, 2e-6, 1e-4, 1e-6, 1e-8, 0);
        double all = Enrichment.concentrationWithReflux(0.01, 0.001, 0.002, 2e-6, 1e-4, 1e-6, 1e-8, 1);
        assertThat(none).isCloseTo(Enrichment.concentration(0.01, 0.001, 2e-6, 1e-6, 1e-8), within(1e-12));
        assertThat(all).isCloseTo(Enrichment.concentration(0.01, 0.001, 2e-6, 1e-4, 1e-8), within(1e-9));
    }

    /** Langmuir 1918 with Gm = 2 mg/m2 and K = 20 L/g (illustrative). */
    @ParameterizedTest
    @CsvSource({"0.005, 0.181818", "0.05, 1", "0.1, 1.333333", "1, 1.904762"})
    void langmuir(double concentration, double milligrams) {
        assertThat(new Adsorption(2e-6, 20).load(concentration) * 1e6).isCloseTo(milligrams, within(1e-6));
    }
}
