package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Validation against Hipparchus 4.0.2 ({@code Erf}, {@code NormalDistribution}). */
class NormalTest {
    private static final double STEP = 0.0137;

    @Test
    void theShareBelowIsThatOfTheReferenceLibrary() {
        for (double z = -12; z <= 12; z += STEP) {
            assertThat(Normal.below(z)).as("z = %s", z).isCloseTo(0.5 * Erf.erfc(-z / Math.sqrt(2)), within(1e-12));
        }
    }

    /** A branch's weight is a product of many small shares: the tail has to hold by ratio too. */
    @Test
    void theTailHoldsByRatio() {
        for (double z = -30; z <= -1; z += STEP) {
            double ratio = Normal.below(z) / (0.5 * Erf.erfc(-z / Math.sqrt(2)));
            assertThat(ratio).as("z = %s", z).isCloseTo(1, within(1e-7));
        }
    }

    @Test
    void theDensityIsThatOfTheReferenceLibrary() {
        NormalDistribution reference = new NormalDistribution(0, 1);
        for (double z = -12; z <= 12; z += STEP) {
            assertThat(Normal.density(z)).as("z = %s", z).isCloseTo(reference.density(z), within(1e-15));
        }
    }

    @Test
    void bothSidesAddUpAndTheFarEndsAreNothingAndAll() {
        for (double z = 0; z <= 40; z += STEP) {
            assertThat(Normal.below(z) + Normal.below(-z)).isCloseTo(1, within(1e-15));
        }
        assertThat(Normal.below(-50)).isZero();
        assertThat(Normal.below(50)).isOne();
        assertThat(Normal.below(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(Normal.below(Double.POSITIVE_INFINITY)).isOne();
    }
}
