package io.github.weirwise.internal.physics.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PlatinumCobaltTest {
    /** Cuthbert and del Giorgio 1992, from memory. */
    @Test
    void oneInverseMetreIsEighteenUnits() {
        assertThat(PlatinumCobalt.fromAbsorption(1)).isCloseTo(18.007, within(1e-9));
        assertThat(PlatinumCobalt.fromAbsorption(0)).isZero();
    }

    @Test
    void thereAndBack() {
        for (double units = 0; units < 5000; units += 7) {
            assertThat(PlatinumCobalt.fromAbsorption(PlatinumCobalt.toAbsorption(units)))
                    .isCloseTo(units, within(1e-9));
        }
    }
}
