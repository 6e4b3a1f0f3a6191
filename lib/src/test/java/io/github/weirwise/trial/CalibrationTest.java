package io.github.weirwise.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CalibrationTest {
    private static Calibration drawn(double shift) {
        SplittableRandom random = new SplittableRandom(5);
        List<Calibration.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < 20000; i++) {
            double chance = random.nextDouble();
            double truth = Math.max(0, Math.min(1, chance + shift));
            pairs.add(new Calibration.Pair(chance, random.nextDouble() < truth));
        }
        return new Calibration(pairs);
    }

    @Test
    void aPerfectForecasterHasNearlyNoError() {
        assertThat(drawn(0).expectedError()).isLessThan(0.012);
        assertThat(drawn(0).reliability()).isLessThan(0.0005);
    }

    @Test
    void aConstantShiftShowsAsItsSize() {
        assertThat(drawn(0.1).expectedError()).isCloseTo(0.1, within(0.015));
    }

    /** Murphy (1973): the Brier score is reliability - resolution + uncertainty, exactly so when bins hold one value each. */
    @Test
    void thePartsAddUpToTheBrierScore() {
        List<Calibration.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            pairs.add(new Calibration.Pair(0.2, i % 4 == 0));
            pairs.add(new Calibration.Pair(0.8, i % 4 != 0));
        }
        Calibration calibration = new Calibration(pairs);
        double sum = calibration.reliability() - calibration.resolution() + calibration.uncertainty();
        assertThat(calibration.brier()).isCloseTo(sum, within(0.002));
        assertThat(calibration.brier()).isCloseTo(0.19, within(1e-9));
    }
}
