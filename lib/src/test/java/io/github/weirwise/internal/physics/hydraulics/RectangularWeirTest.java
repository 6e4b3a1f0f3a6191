package io.github.weirwise.internal.physics.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Range;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RectangularWeirTest {
    private static final double LITRE_PER_HOUR = 1e-3 / 3600;

    /** Kindsvater and Carter by the ISO 1438 coefficients, worked separately; crest 100 mm above the floor. */
    @ParameterizedTest
    @CsvSource({
        "0.05, 0.05, 0.010, 366.97", "0.1, 0.1, 0.020, 1977.76", "0.2, 0.2, 0.040, 11103.26",
        "0.1, 0.2, 0.010, 750.19", "0.1, 0.2, 0.015, 1317.24", "0.2, 0.4, 0.040, 10690.96"
    })
    void dischargeIsTheFormula(double width, double channel, double head, double litresPerHour) {
        double q = new RectangularWeir(width, channel, 0.1).discharge(head);
        assertThat(q / LITRE_PER_HOUR).isCloseTo(litresPerHour, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"500, 0.1, 7.482", "2000, 0.1, 20.154", "6000, 0.05, 66.743", "4000, 0.15, 24.486"})
    void headIsTheInverse(double litresPerHour, double width, double headMm) {
        double h = new RectangularWeir(width, width, 0.1).head(litresPerHour * LITRE_PER_HOUR);
        assertThat(h * 1000).isCloseTo(headMm, within(0.001));
    }

    /** Villemonte 1947, as restated in the EPA SWMM Reference Manual volume II. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.2, 0.964569", "0.5, 0.845386", "0.6, 0.786125", "0.8, 0.616307", "1, 0", "-0.3, 1"})
    void drownedFactorIsVillemonte(double ratio, double factor) {
        assertThat(RectangularWeir.drownedFactor(0.04, 0.04 * ratio)).isCloseTo(factor, within(1e-6));
    }

    @Test
    void headAndDischargeUndoEachOtherFreeAndDrowned() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 20_000; i++) {
            double width = random.nextDouble(0.03, 0.5);
            RectangularWeir weir =
                    new RectangularWeir(width, width * random.nextDouble(1, 5), random.nextDouble(0.02, 0.5));
            double head = random.nextDouble(1e-5, 0.2);
            assertThat(weir.head(weir.discharge(head))).isCloseTo(head, within(1e-11));
            double downstream = random.nextDouble(-0.1, 0.999) * head;
            double q = weir.discharge(head) * RectangularWeir.drownedFactor(head, downstream);
            assertThat(weir.drownedHead(q, downstream)).isCloseTo(head, within(1e-9));
        }
    }

    @Test
    void theBandHoldsTheHeadAndIsWidestInProportionAtLowFlow() {
        RectangularWeir weir = new RectangularWeir(0.1, 0.1, 0.2);
        for (double q = 0; q < 6000; q += 25) {
            Range band = weir.headBand(q * LITRE_PER_HOUR);
            assertThat(band.contains(weir.head(q * LITRE_PER_HOUR)))
                    .as("%s L/h", q)
                    .isTrue();
        }
        Range middling = weir.headBand(2200 * LITRE_PER_HOUR);
        assertThat(middling.width()).isBetween(0.001, 0.004);
        assertThat(weir.headBand(0)).isEqualTo(new Range(0, RectangularWeir.STARTING_HEAD_M));
    }

    @Test
    void aCrestWiderThanItsChannelIsRefused() {
        assertThatThrownBy(() -> new RectangularWeir(0.2, 0.1, 0.1))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("channelWidthM is 0.1");
    }
}
