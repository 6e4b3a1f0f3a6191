package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Normal near the middle, level far out. */
class BellTest {
    private final Bell bell = new Bell(2, 60);

    /** Standard normal density 0.39894 at 0 and 0.24197 at 1 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1; from memory). */
    @Test
    void isNormalNearTheMiddle() {
        assertThat(Math.exp(bell.log(0))).isCloseTo(0.39894 / 2, within(1e-5));
        assertThat(Math.exp(bell.log(-2))).isCloseTo(0.24197 / 2, within(1e-5));
        assertThat(bell.log(0)).isEqualTo(bell.peak());
    }

    @Test
    void aMisreadingIsEquallyLikelyHoweverFarOff() {
        assertThat(bell.log(20)).isEqualTo(bell.log(-45)).isEqualTo(Math.log(0.04 / 60));
    }
}
