package io.github.weirwise.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.hydraulics.Drain;
import io.github.weirwise.internal.physics.hydraulics.Pipe;
import io.github.weirwise.internal.physics.hydraulics.PipeFriction;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The hydraulics that the fit check stands on, against published worked examples. */
class PlumbingValidationTest {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double US_GPM = 3.785411784e-3 / 60;

    /**
     * Crane TP-410, example 7-19: a reservoir drains by gravity through an entrance, a mitre bend, an open gate valve, 10 ft
     * of 3 in and 20 ft of 2 in schedule 40 pipe under 11.5 ft of head; published answer 137 US gal/min. Coefficients of
     * bend and valve (60 and 8 times f = 0.018) from memory, hence 2 %.
     */
    @Test
    void aReservoirDrainsAtThePublishedRate() {
        double bore3 = 3.068 * INCH;
        double bore2 = 2.067 * INCH;
        double roughness = 0.0018 * INCH;
        double viscosity = 1.1e-3 / (62.364 * 16.018463);
        double turbulentFriction3 = 0.018;
        double losses3 = 0.5 + 60 * turbulentFriction3 + 8 * turbulentFriction3;
        Pipe upper = new Pipe(bore3, 10 * FOOT, roughness, losses3);
        Pipe lower = new Pipe(bore2, 20 * FOOT, roughness, SuddenChange.narrowing(bore2 / bore3) + 1.0);

        double low = 0;
        double high = 500 * US_GPM;
        while (high - low > 1e-9 * US_GPM) {
            double middle = 0.5 * (low + high);
            boolean more = upper.headLoss(middle, viscosity) + lower.headLoss(middle, viscosity) < 11.5 * FOOT;
            low = more ? middle : low;
            high = more ? high : middle;
        }
        assertThat(low / US_GPM).isCloseTo(137, within(0.02 * 137));
    }

    /** Crane TP-410M, example 7-1: 200 L/min of water at 30 C in smooth plastic pipe of 50 mm; Re 100600, f 0.0179. */
    @Test
    void frictionInSmoothPlasticPipeIsThePublishedOne() {
        double speed = 0.2 / 60 / (Math.PI / 4 * 0.05 * 0.05);
        double reynolds = speed * 0.05 * 995.6 / 0.8e-3;
        assertThat(reynolds).isCloseTo(100600, within(0.06 * 100600));
        assertThat(PipeFriction.churchill(100600, 0)).isCloseTo(0.0179, within(0.0002));
    }

    /** Full-bore drains with entrance, two elbows and exit, 1.2 m long; computed with the fluids library 1.3.1. */
    @ParameterizedTest
    @CsvSource({"20, 0.3, 1252.1", "25, 1.0, 3782.3", "32, 0.6, 4928.3", "40, 0.6, 7881.4", "50, 1.0, 16238.4"})
    void fittingsAndPipeAddUpToTheReferenceFlow(double boreMm, double dropM, double litresPerHour) {
        Plumbing drain = new Plumbing(
                boreMm, 1200, List.of(Fitting.ENTRANCE_SHARP, Fitting.ELBOW_90, Fitting.ELBOW_90, Fitting.EXIT));
        assertThat(3.6e6 * drain.pipe().discharge(dropM, 0.94e-6))
                .isCloseTo(litresPerHour, within(0.001 * litresPerHour));
    }

    /** Simpson 1969, Hills 1983: V/sqrt(g D) = 0.3, from memory; the bore is the inverse of the flow. */
    @ParameterizedTest
    @CsvSource({"20, 150.26", "25, 262.5", "40, 850.01", "50, 1484.91"})
    void aQuietDrainHasTheSelfVentingBore(double boreMm, double litresPerHour) {
        assertThat(3.6e6 * Drain.selfVenting(boreMm / 1000)).isCloseTo(litresPerHour, within(0.06));
        assertThat(1000 * Drain.selfVentingBore(litresPerHour / 3.6e6)).isCloseTo(boreMm, within(0.01));
    }
}
