package io.github.weirwise.internal.physics.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.report.OutOfRangeException;
import java.util.Map;
import java.util.Random;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What the formulas refuse, what they take to the last, and the drowned weir. */
class HydraulicsLimitsTest {
    private static final RectangularWeir WEIR = new RectangularWeir(0.1, 0.1, 0.2);
    private static final Pipe PIPE = new Pipe(0.025, 2, Pipe.SMOOTH_PLASTIC_M, 1.5);
    private static final Slot SLOT = new Slot(0.05, 0.01, 0.61);

    @Test
    void whatLiesOutsideTheLimitsIsRefusedByName() {
        Map<String, ThrowingCallable> refused = Map.ofEntries(
                Map.entry("upstreamHeadM", () -> RectangularWeir.drownedFactor(101, 0)),
                Map.entry("downstreamHeadM", () -> RectangularWeir.drownedFactor(0.1, -101)),
                Map.entry("dischargeM3PerS ", () -> WEIR.head(-1e-9)),
                Map.entry("downstreamHeadM ", () -> WEIR.drownedHead(1e-4, 101)),
                Map.entry("headM", () -> WEIR.discharge(101)),
                Map.entry("widthM", () -> FullWidthWeir.rehbock(0, 0.2, 0.02)),
                Map.entry("crestHeightM", () -> FullWidthWeir.ackers(0.1, 0, 0.02)),
                Map.entry("headM  ", () -> FullWidthWeir.white(0.1, 0.2, -0.02)),
                Map.entry("widthM ", () -> FullWidthWeir.francis(101, 0.02)),
                Map.entry("kinematicViscosityM2PerS", () -> PIPE.headLoss(1e-4, 1e-2)),
                Map.entry("kinematicViscosityM2PerS ", () -> PIPE.discharge(0.1, 1e-9)),
                Map.entry("reynolds", () -> PipeFriction.churchill(-1, 0)),
                Map.entry("roughnessM", () -> new Pipe(0.025, 2, 0.0026, 1)),
                Map.entry("lossCoefficient", () -> new Pipe(0.025, 0, 0, 0).discharge(0.1, 1e-6)));
        refused.forEach((name, call) -> assertThatThrownBy(call)
                .as(name)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(name.strip()));
    }

    @Test
    void theLimitsThemselvesAreTaken() {
        assertThatCode(() -> {
                    WEIR.discharge(100);
                    WEIR.head(1000);
                    RectangularWeir.drownedFactor(100, -100);
                    FullWidthWeir.rehbock(100, 0.001, 100);
                    PIPE.headLoss(1000, 1e-3);
                    new Pipe(0.025, 2, 0.0025, 1e4);
                })
                .doesNotThrowAnyException();
    }

    /** Kindsvater and Carter for the full width: kb = -0.9 mm, kh = 1 mm. */
    @Test
    void theDischargeCoefficientIsTheOneInTheDischarge() {
        for (double head : new double[] {0.005, 0.02, 0.08, 0.2}) {
            double bare = 2.0 / 3 * Math.sqrt(2 * 9.80665) * (0.1 - 0.0009) * Math.pow(head + 0.001, 1.5);
            assertThat(WeirCoefficient.at(WEIR, head) * bare).isCloseTo(WEIR.discharge(head), withinPercentage(1e-9));
        }
    }

    @Test
    void aDrownedWeirPassesVillemontesShareOfTheFreeFlow() {
        Random random = new Random(20261125);
        for (int i = 0; i < 10_000; i++) {
            double crest = 0.05 + 0.3 * random.nextDouble();
            RectangularWeir weir = new RectangularWeir(0.05 + 0.2 * random.nextDouble(), 0.3, crest);
            double discharge = Math.pow(10, -5 + 2.5 * random.nextDouble());
            double behind = Math.pow(10, -4 + 3 * random.nextDouble());
            double head = weir.drownedHead(discharge, behind);
            assertThat(head).isGreaterThan(behind).isGreaterThanOrEqualTo(weir.head(discharge));
            double passed = weir.discharge(head) * RectangularWeir.drownedFactor(head, behind);
            // The factor's slope is steep where the two levels are nearly one.
            assertThat(passed).isCloseTo(discharge, withinPercentage(1e-3));
            assertThat(weir.drownedHead(discharge, 1.1 * behind)).isGreaterThan(head);
        }
    }

    @Test
    void waterBehindTheWeirBelowItsCrestDoesNotMatterAndWithoutFlowTheLevelsAreOne() {
        assertThat(WEIR.drownedHead(6e-4, 0)).isEqualTo(WEIR.head(6e-4));
        assertThat(WEIR.drownedHead(6e-4, -0.05)).isEqualTo(WEIR.head(6e-4));
        assertThat(WEIR.drownedHead(0, 0.013)).isEqualTo(0.013);
        assertThat(RectangularWeir.drownedFactor(0.02, 0)).isEqualTo(1);
        assertThat(RectangularWeir.drownedFactor(0.02, 0.02)).isZero();
        assertThat(RectangularWeir.drownedFactor(0, -0.01)).isZero();
        // (1 - 0.5^1.5)^0.385 = 0.6464^0.385 = 0.845
        assertThat(RectangularWeir.drownedFactor(0.04, 0.02)).isCloseTo(0.845, within(0.001));
    }

    @Test
    void theBandOfTheHeadIsAsWideAsTheDischargeIsUncertain() {
        RectangularWeir wide = new RectangularWeir(0.5, 0.5, 0.2);
        for (double[] known : new double[][] {{0.05, 0.03}, {0.025, 0.06}, {0.015, 0.125}, {0.010, 0.20}}) {
            double discharge = wide.discharge(known[0]);
            assertThat(wide.discharge(wide.headBand(discharge).low()))
                    .isCloseTo(discharge / (1 + known[1]), withinPercentage(1e-6));
            assertThat(wide.discharge(wide.headBand(discharge).high()))
                    .isCloseTo(discharge / (1 - known[1]), withinPercentage(1e-6));
        }
        assertThat(wide.headBand(0).high()).isEqualTo(RectangularWeir.STARTING_HEAD_M);
    }

    @Test
    void aPipeHoldsItsLengthAndASlotIsAWeirUpToItsHeight() {
        assertThat(PIPE.volumeM3()).isCloseTo(Math.PI / 4 * 0.025 * 0.025 * 2, within(1e-12));
        assertThat(SLOT.isWeir(0.01)).isTrue();
        assertThat(SLOT.isWeir(0.0101)).isFalse();
        assertThat(PIPE.discharge(0, 1e-6)).isZero();
    }
}
