package io.github.weirwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A shift is drawn where the readings ask for it, and the correction takes the lean back. */
class SharedShiftTest {
    private static final double PRIOR_SPREAD = 1.5;

    private static SharedShift after(double... residuals) {
        SharedShift shift = new SharedShift(PRIOR_SPREAD, residuals.length);
        for (double residual : residuals) {
            shift.add(residual, 2, 1);
        }
        return shift;
    }

    @Test
    void withoutReadingsItIsThePriorAndNothingIsCorrected() {
        SharedShift shift = after();
        assertThat(shift.draw(0.8)).isEqualTo(0.8 * PRIOR_SPREAD);
        assertThat(shift.logCorrection()).isZero();
    }

    /** Normal prior and normal readings: the middle is the mean weighed by precision (Gelman et al., Bayesian Data Analysis, 2.5; from memory). */
    @Test
    void theMiddleIsTheMeanWeighedByPrecision() {
        double precision = 1 / (PRIOR_SPREAD * PRIOR_SPREAD) + 3 / 4.0;
        assertThat(after(1, 2, 3).draw(0)).isCloseTo(6 / 4.0 / precision, within(1e-12));
    }

    @Test
    void drawsWithTheirCorrectionsStandForThePriorAgain() {
        SplittableRandom random = new SplittableRandom(7);
        SharedShift shift = after(0.5, 1, 1.5);
        int draws = 200_000;
        double sum = 0;
        double mean = 0;
        for (int i = 0; i < draws; i++) {
            double normal = random.nextGaussian();
            double value = shift.draw(normal);
            double weight = Math.exp(shift.logCorrection());
            assertThat(shift.logCorrection()).isLessThanOrEqualTo(0.5 * normal * normal + 1e-12);
            sum += weight;
            mean += weight * value;
        }
        assertThat(sum / draws).isCloseTo(1, within(0.05));
        assertThat(mean / draws).isCloseTo(0, within(0.1));
    }

    @Test
    void oneMisreadingDoesNotDragItAlong() {
        assertThat(after(1, 1, 1, 1, 30).draw(0)).isCloseTo(after(1, 1, 1, 1).draw(0), within(1e-9));
    }

    @Test
    void forgetsWhatWasReadBefore() {
        SharedShift shift = after(5, 5);
        shift.forget();
        assertThat(shift.draw(1)).isEqualTo(PRIOR_SPREAD);
    }
}
