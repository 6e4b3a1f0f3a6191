package io.github.weirwise.internal.physics.seawater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.report.OutOfRangeException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeawaterTest {
    /** Fofonoff and Millard 1983, UNESCO Technical Papers in Marine Science 44; temperatures there are IPTS-68. */
    @ParameterizedTest
    @CsvSource({"0, 0, 999.842594", "0, 30, 995.65113374", "35, 0, 1028.10633141", "35, 30, 1021.72863949"})
    void densityMeetsTheUnescoValues(double salinity, double celsius68, double expected) {
        assertThat(Seawater.density(salinity, celsius68 / 1.00024)).isCloseTo(expected, within(1e-7));
    }

    /** IAPWS R12-08 table 4 (998 kg/m3, 298.15 K); the fit states 1.5 %, its pure-water part is far better. */
    @Test
    void viscosityOfPureWaterMeetsIapws() {
        assertThat(Seawater.viscosity(0, 25)).isCloseTo(889.7351e-6, within(2e-6));
    }

    /** IAPWS G14-19, check table. */
    @ParameterizedTest
    @CsvSource({"35, 25, 73.068674787", "35, 80, 63.910806802", "60, 80, 64.795058112", "120, 20, 76.432940211"})
    void surfaceTensionMeetsTheIapwsTable(double salinity, double celsius, double milliNewton) {
        assertThat(MoreSeawater.surfaceTension(salinity, celsius) * 1000).isCloseTo(milliNewton, within(1e-8));
    }

    /** Garcia and Gordon 1992: 274.61 umol/kg at S = 35 and 10 degrees IPTS-68 (from memory). */
    @Test
    void oxygenMeetsThePapersCheckValue() {
        assertThat(Seawater.oxygenSolubility(35, 10 / 1.00024)).isCloseTo(274.61, within(0.005));
    }

    @Test
    void anErrorNamesValueLimitAndUnit() {
        assertThatThrownBy(() -> Seawater.density(35, 212))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("celsius is 212, must be -4 to 100 \u00b0C");
        assertThatThrownBy(() -> Seawater.viscosity(Double.NaN, 25)).isInstanceOf(OutOfRangeException.class);
    }
}
