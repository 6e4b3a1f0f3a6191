package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StatedChanceTest {
    @ParameterizedTest
    @EnumSource
    void risesWithTheShareAndIsNeverCertain(StatedChance table) {
        double before = -1;
        for (int i = 0; i <= 1000; i++) {
            double stated = table.of(i / 1000.0);
            assertThat(stated).isGreaterThan(before - 1e-12).isBetween(0.0, 0.992);
            before = stated;
        }
        assertThat(table.of(0)).isZero();
        assertThat(table.of(1)).isGreaterThan(0.9);
    }

    @Test
    void aFaultBySingleBeliefIsStatedMostModestly() {
        for (double share : new double[] {0.3, 0.5, 0.7, 0.9}) {
            assertThat(StatedChance.forCause(Cause.NECK_DIRTY, false).of(share))
                    .isLessThan(share)
                    .isLessThan(StatedChance.forCause(Cause.NECK_DIRTY, true).of(share))
                    .isLessThan(StatedChance.forCause(Cause.WEIR_TOO_LOW, false).of(share));
        }
        assertThat(StatedChance.forCause(Cause.LOW_LOAD, false)).isEqualTo(StatedChance.OTHER);
        assertThat(StatedChance.forCause(Cause.FILM_BREAKER, false)).isEqualTo(StatedChance.OTHER);
    }
}
