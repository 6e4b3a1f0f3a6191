package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StatedChanceTest {
    @Test
    void risesWithTheShareAndIsNeverCertain() {
        double before = -1;
        for (int i = 0; i <= 1000; i++) {
            double stated = StatedChance.of(i / 1000.0);
            assertThat(stated).isGreaterThan(before - 1e-12).isBetween(0.0, 0.983);
            before = stated;
        }
        assertThat(StatedChance.of(0)).isZero();
        assertThat(StatedChance.of(1)).isEqualTo(0.983);
    }
}
