package io.github.weirwise.internal.physics.bubbles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.bubbles.RivalSpeeds.Surface;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalSpeedTest {
    private static final double RHO = 998.21;
    private static final double MU = 1.0016e-3;
    private static final double SIGMA = 0.07274;
    private static final Percentage THOUSANDTH = Percentage.withPercentage(0.1);

    /** Fresh water at 20 degrees; the laws of the named authors worked separately, mm/s. */
    @ParameterizedTest
    @CsvSource({"0.4, 42.401", "0.5, 55.105", "1.5, 162.216"})
    void contaminatedIsSchillerNaumann(double mm, double speed) {
        assertThat(TerminalSpeed.contaminated(mm / 1000, RHO, MU) * 1000).isCloseTo(speed, THOUSANDTH);
    }

    @ParameterizedTest
    @CsvSource({
        "PURE, 0.2, 22.836",
        "PURE, 0.8, 173.542",
        "PURE, 1.0, 271.159",
        "SLIGHTLY_CONTAMINATED, 1.0, 180.772",
        "FULLY_CONTAMINATED, 1.0, 112.222"
    })
    void tomiyamasThreeSurfaces(Surface surface, double mm, double speed) {
        assertThat(RivalSpeeds.tomiyama(mm / 1000, RHO, MU, SIGMA, surface) * 1000)
                .isCloseTo(speed, THOUSANDTH);
    }

    @ParameterizedTest
    @CsvSource({"0.2, 16.219", "0.6, 68.409", "1.5, 165.666"})
    void cliftsSphere(double mm, double speed) {
        assertThat(RivalSpeeds.cliftSphere(mm / 1000, RHO, MU) * 1000).isCloseTo(speed, THOUSANDTH);
    }

    @Test
    void gracesEllipsoidAndMendelsonsWave() {
        assertThat(RivalSpeeds.graceEllipsoid(0.0008, RHO, MU, SIGMA) * 1000).isCloseTo(93.369, THOUSANDTH);
        assertThat(RivalSpeeds.mendelson(0.0015, RHO, SIGMA) * 1000).isCloseTo(323.289, THOUSANDTH);
        assertThat(RivalSpeeds.morton(RHO, MU, SIGMA)).isCloseTo(2.565865e-11, Offset.offset(1e-15));
    }

    /** The two laws are the same physics for a large clean bubble (Tomiyama's Eotvos branch). */
    @Test
    void largePureBubblesFollowMendelson() {
        for (double d = 0.003; d < 0.02; d += 0.001) {
            double wave = RivalSpeeds.mendelson(d, RHO - 1.2, SIGMA);
            assertThat(RivalSpeeds.tomiyama(d, RHO, MU, SIGMA, Surface.PURE))
                    .isCloseTo(wave, Percentage.withPercentage(0.2));
        }
    }

    @Test
    void aBubbleOf800MicrometresInSeaWaterRisesAt92Point5() {
        assertThat(TerminalSpeed.contaminated(0.0008, 1023, 0.96e-3) * 1000).isCloseTo(92.5, within(0.15));
    }
}
