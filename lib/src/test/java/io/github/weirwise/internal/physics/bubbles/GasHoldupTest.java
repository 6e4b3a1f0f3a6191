package io.github.weirwise.internal.physics.bubbles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasHoldupTest {
    /** The Wallis 1969 balance with n = 2, worked separately. */
    @ParameterizedTest
    @CsvSource({
        "0.056697, 0.01, -0.005, 0.321651",
        "0.092513, 0.002, -0.01, 0.025018",
        "0.092513, 0.01, 0, 0.123295",
        "0.092513, 0.01, -0.01, 0.149399",
        "0.114493, 0.005, -0.005, 0.048207"
    })
    void lowerRootOfTheWallisBalance(double speed, double gas, double liquid, double holdup) {
        assertThat(RivalHoldup.wallis(gas, liquid, speed)).isCloseTo(holdup, within(1e-5));
    }

    /** Wallis 1969: at half gas a still column passes a quarter of the bubbles' speed and no more. */
    @Test
    void aStillColumnFloodsAtAQuarterOfTheSpeed() {
        assertThat(RivalHoldup.floodingGasFlux(0, 0.056697, 2) * 1000).isCloseTo(14.1743, within(1e-4));
        assertThat(RivalHoldup.wallis(0.056697 / 4, 0, 0.056697)).isCloseTo(0.5, within(1e-6));
        assertThat(RivalHoldup.wallis(0.01418, 0, 0.056697)).isNaN();
    }

    /** Richardson and Zaki 1954, from memory. */
    @Test
    void richardsonZakiExponents() {
        assertThat(RivalHoldup.richardsonZakiExponent(0.1)).isEqualTo(4.65);
        assertThat(RivalHoldup.richardsonZakiExponent(100)).isCloseTo(2.80776, within(1e-5));
        assertThat(RivalHoldup.richardsonZakiExponent(5000)).isEqualTo(2.39);
    }

    /** Zuber and Findlay 1965; 0.2488 m/s in clean sea water of 25 degrees, worked separately. */
    @Test
    void churnDriftSpeed() {
        assertThat(RivalHoldup.churnDriftSpeed(1023.34, 0.07307)).isCloseTo(0.2488, within(1e-4));
    }

    @Test
    void aRootBalancesAndANaNMeansPastTheLimit() {
        SplittableRandom random = new SplittableRandom(2);
        int flooded = 0;
        for (int i = 0; i < 30_000; i++) {
            double speed = random.nextDouble(0.01, 0.3);
            double n = random.nextDouble(1.2, 4.65);
            double liquid = speed * random.nextDouble(-1.1, 0.5);
            double gas = speed * random.nextDouble(0, 0.6);
            double e = GasHoldup.richardsonZaki(gas, liquid, speed, n);
            double limit = RivalHoldup.floodingGasFlux(liquid, speed, n);
            if (Double.isNaN(e)) {
                flooded++;
                assertThat(gas).isGreaterThan(limit * (1 - 1e-6));
            } else {
                assertThat(e).isBetween(0.0, 1.0);
                assertThat(gas).isLessThanOrEqualTo(limit * (1 + 1e-6));
                double balance = speed * e * Math.pow(1 - e, n) - gas * (1 - e) + liquid * e;
                assertThat(balance).isCloseTo(0, within(1e-10));
            }
        }
        assertThat(flooded).isBetween(3_000, 27_000);
    }
}
