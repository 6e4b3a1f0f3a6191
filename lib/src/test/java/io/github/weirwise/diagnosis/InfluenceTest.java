package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.report.OutOfRangeException;
import org.junit.jupiter.api.Test;

/** What causes do to the model adds up as it should. */
class InfluenceTest {
    private static final Influence ONE = new Influence(0.5, 0.9, 0.8, 1.2, -3, 2, 4, 1.5, -2, 1);
    private static final Influence OTHER = new Influence(0.6, 0.5, 0.5, 1.5, 1, 3, 7, 2, 1, 1);

    @Test
    void factorsMultiplyShiftsAddAndTheHigherWaterDrowns() {
        Influence both = ONE.and(OTHER);
        assertThat(both.airFactor()).isEqualTo(0.5 * 0.6);
        assertThat(both.flowFactor()).isEqualTo(0.9 * 0.5);
        assertThat(both.lifeFactor()).isEqualTo(0.8 * 0.5);
        assertThat(both.riseFactor()).isEqualTo(1.2 * 1.5);
        assertThat(both.slipMm()).isEqualTo(-2);
        assertThat(both.backPressureMm()).isEqualTo(5);
        assertThat(both.drownedByMm()).isEqualTo(7);
        assertThat(both.strengthFactor()).isEqualTo(3);
        assertThat(both.salinityShift()).isEqualTo(-1);
        assertThat(OTHER.and(ONE)).isEqualTo(both);
    }

    @Test
    void nothingChangesNothing() {
        assertThat(ONE.and(Influence.NONE)).isEqualTo(ONE);
        assertThat(Influence.NONE.and(ONE)).isEqualTo(ONE);
    }

    @Test
    void shorthandsTouchOnlyWhatTheyName() {
        assertThat(Influence.onAir(0.4)).isEqualTo(new Influence(0.4, 1, 1, 1, 0, 0, 0, 1, 0, 1));
        assertThat(Influence.onFlow(0.4)).isEqualTo(new Influence(1, 0.4, 1, 1, 0, 0, 0, 1, 0, 1));
        assertThat(Influence.onFoam(0.4, 2)).isEqualTo(new Influence(1, 1, 0.4, 1, 0, 0, 0, 2, 0, 1));
    }

    @Test
    void everyComponentHasItsRange() {
        assertThatThrownBy(() -> new Influence(2.1, 1, 1, 1, 0, 0, 0, 1, 0, 1)).hasMessageContaining("airFactor");
        assertThatThrownBy(() -> new Influence(1, -0.1, 1, 1, 0, 0, 0, 1, 0, 1)).hasMessageContaining("flowFactor");
        assertThatThrownBy(() -> new Influence(1, 1, 11, 1, 0, 0, 0, 1, 0, 1)).hasMessageContaining("lifeFactor");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 0.1, 0, 0, 0, 1, 0, 1)).hasMessageContaining("riseFactor");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 1, 51, 0, 0, 1, 0, 1)).hasMessageContaining("slipMm");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 1, 0, -1, 0, 1, 0, 1)).hasMessageContaining("backPressureMm");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 1, 0, 0, 201, 1, 0, 1)).hasMessageContaining("drownedByMm");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 1, 0, 0, 0, 21, 0, 1)).hasMessageContaining("strengthFactor");
        assertThatThrownBy(() -> new Influence(1, 1, 1, 1, 0, 0, 0, 1, 11, 1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("salinityShift");
    }
}
