package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FoamLifeTest {
    /** Bikerman 1938: a foam that bursts altogether holds Q Sigma of gas. */
    @Test
    void nothingOutlivesTheVolumeOfBikerman() {
        FoamLife life = new FoamLife(24, 1.2);
        assertThat(life.survivingShare(4e-5, 24 * 4e-5)).isZero();
        assertThat(life.survivingShare(4e-5, 0)).isEqualTo(1);
        assertThat(life.survivingShare(0, 0)).isZero();
        assertThat(life.thetaS()).isCloseTo(4.8, within(1e-12));
    }

    /** The mean of a law of lives is the integral of its survival. */
    @Test
    void sigmaIsTheMeanLife() {
        FoamLife life = new FoamLife(24, 3);
        double integral = 0;
        double step = 0.05;
        for (double t = step / 2; t < 20_000; t += step) {
            integral += life.survival(t) * step;
        }
        assertThat(integral).isCloseTo(24, within(0.01));
    }

    @Test
    void theShareIsTheSurvivalAtTheAgeOfTheLip() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 20_000; i++) {
            FoamLife life = new FoamLife(random.nextDouble(1, 100), random.nextDouble(1.05, 4));
            double gas = random.nextDouble(1e-6, 1e-4);
            double volume = random.nextDouble(0, 0.95) * gas * life.meanLifeS();
            double share = life.survivingShare(gas, volume);
            double age = life.ageAtTopS(gas, volume);
            assertThat(share).isBetween(0.0, 1.0);
            if (age < 1e12) {
                assertThat(life.survival(age)).isCloseTo(share, within(1e-9));
            }
        }
    }

    @Test
    void aNarrowLawApproachesTheExponential() {
        FoamLife narrow = new FoamLife(20, 1000);
        assertThat(narrow.survival(20)).isCloseTo(Math.exp(-1), within(5e-4));
    }
}
