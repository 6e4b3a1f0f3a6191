package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The bend between the straight sum and the amount: rising, even, there and back, and steeper where foam gives out. */
class BendTest {
    private static final double STEP = 0.05;

    @Test
    void itRisesEvenlyAndNearlyDryFoamAnswersMore() {
        double slopeBefore = Double.POSITIVE_INFINITY;
        for (double raw = -3.7; raw < 8; raw += STEP) {
            double slope = (SumModel.bent(raw + 1e-6) - SumModel.bent(raw - 1e-6)) / 2e-6;
            assertThat(slope).as("at %s", raw).isPositive().isLessThanOrEqualTo(slopeBefore + 1e-6);
            assertThat(SumModel.bend(raw)).isCloseTo(slope, within(1e-4));
            slopeBefore = slope;
        }
        assertThat(SumModel.bend(0)).isEqualTo(1);
    }

    @Test
    void whatIsReadGoesBackToTheSum() {
        for (double raw = -3.7; raw < 8; raw += STEP) {
            assertThat(SumModel.unbent(SumModel.bent(raw))).isCloseTo(raw, within(1e-9));
        }
    }

    @Test
    void moreThanNothingIsNeverLessThanNothing() {
        assertThat(SumModel.bent(-1000)).isFinite().isEqualTo(SumModel.bent(-900));
        assertThat(SumModel.bentSd(-1000, 100)).isFinite();
    }
}
