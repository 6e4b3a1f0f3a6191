package io.github.weirwise.internal.physics.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between numbers, whatever the numbers are: 70,000 seeded points. */
class HydraulicsRelationsTest {
    private static final int POINTS = 20_000;

    @Test
    void moreHeadPassesMoreOverEveryWeirAndMoreFlowNeedsMoreHead() {
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < POINTS; i++) {
            double width = random.nextDouble(0.03, 0.5);
            RectangularWeir weir =
                    new RectangularWeir(width, width * random.nextDouble(1, 4), random.nextDouble(0.03, 0.4));
            double h = random.nextDouble(1e-4, 0.1);
            double more = h + random.nextDouble(1e-5, 0.01);
            assertThat(weir.discharge(more)).isGreaterThan(weir.discharge(h));
            double q = weir.discharge(h);
            double down = random.nextDouble(-0.01, 0.05);
            double drowned = weir.drownedHead(q, down);
            assertThat(drowned).isGreaterThanOrEqualTo(weir.head(q) - 1e-12).isGreaterThanOrEqualTo(down);
            assertThat(weir.drownedHead(q * 1.01, down)).isGreaterThan(drowned);
            assertThat(weir.drownedHead(q, down + 0.001)).isGreaterThanOrEqualTo(drowned - 1e-12);
        }
    }

    @Test
    void aNarrowCrestNearTheFloorStillPassesMoreWithMoreHead() {
        SplittableRandom random = new SplittableRandom(24);
        for (int i = 0; i < POINTS; i++) {
            double width = random.nextDouble(0.005, 0.05);
            RectangularWeir weir = new RectangularWeir(width, width * random.nextDouble(4, 400), 0.001 * (1 + i % 20));
            double h = Math.exp(random.nextDouble(Math.log(1e-3), Math.log(50)));
            double q = weir.discharge(h);
            assertThat(weir.discharge(1.01 * h)).isGreaterThan(q);
            assertThat(weir.head(q)).isCloseTo(h, within(1e-6 * h));
        }
    }

    @Test
    void slotAndOrificeUndoThemselvesAndTheSwitchHasNoStep() {
        SplittableRandom random = new SplittableRandom(22);
        for (int i = 0; i < POINTS; i++) {
            Slot slot = new Slot(random.nextDouble(0.002, 0.2), random.nextDouble(0.002, 0.1), 0.61);
            double h = random.nextDouble(0, 4) * slot.heightM();
            double q = slot.discharge(h);
            assertThat(slot.head(q)).isCloseTo(h, within(1e-9));
            assertThat(slot.discharge(h + 1e-4)).isGreaterThan(q);
            double edge = slot.heightM();
            assertThat(slot.discharge(edge * (1 + 1e-9)))
                    .isCloseTo(slot.discharge(edge), within(1e-6 * slot.discharge(edge)));
            Orifice hole = Orifice.round(random.nextDouble(0.002, 0.05), Orifice.SHARP_EDGED);
            assertThat(hole.head(hole.discharge(h))).isCloseTo(h, within(1e-12));
        }
    }

    /** From one and a half heights on a covered slot is an orifice under the head over its centre. */
    @Test
    void aWellCoveredSlotIsAnOrifice() {
        Slot slot = new Slot(0.1, 0.02, 0.61);
        Orifice orifice = new Orifice(0.002, 0.61);
        assertThat(slot.discharge(0.03) / orifice.discharge(0.02)).isBetween(0.988, 1.0);
        assertThat(slot.discharge(0.3) / orifice.discharge(0.29)).isCloseTo(1, within(1e-4));
    }

    @Test
    void pipesUndoThemselvesAndLoseMoreWhenLongerOrNarrower() {
        SplittableRandom random = new SplittableRandom(23);
        for (int i = 0; i < POINTS; i++) {
            double bore = random.nextDouble(0.008, 0.06);
            double length = random.nextDouble(0.1, 5);
            double viscosity = random.nextDouble(0.7e-6, 1.3e-6);
            Pipe pipe = new Pipe(bore, length, Pipe.SMOOTH_PLASTIC_M, random.nextDouble(1, 8));
            double q = random.nextDouble(1e-6, 2e-3);
            double loss = pipe.headLoss(q, viscosity);
            assertThat(new Pipe(bore, length * 1.1, pipe.roughnessM(), pipe.lossCoefficient()).headLoss(q, viscosity))
                    .isGreaterThan(loss);
            assertThat(new Pipe(bore * 0.95, length, pipe.roughnessM(), pipe.lossCoefficient()).headLoss(q, viscosity))
                    .isGreaterThan(loss);
            if (i % 10 == 0 && loss < 1000) {
                assertThat(pipe.discharge(loss, viscosity)).isCloseTo(q, within(1e-9 * q));
            }
        }
    }

    @Test
    void frictionIsPoiseuilleWhenSlowAndColebrookWhenFast() {
        SplittableRandom random = new SplittableRandom(24);
        for (int i = 0; i < 10_000; i++) {
            double slow = random.nextDouble(0.1, 1500);
            assertThat(PipeFriction.churchill(slow, 0) * slow / 64).isCloseTo(1, within(0.002));
            double fast = Math.exp(random.nextDouble(Math.log(1e4), Math.log(1e8)));
            double rough = random.nextDouble(0, 0.02);
            double ratio = PipeFriction.churchill(fast, rough) / Colebrook.friction(fast, rough);
            assertThat(ratio).as("Re %s, e/D %s", fast, rough).isBetween(0.965, 1.04);
        }
    }

    @Test
    void aRimIsAWeirBeforeItIsAHole() {
        CircularLip lip = new CircularLip(0.05);
        double weir = 0.6 * 2 / 3 * Math.sqrt(2 * 9.80665) * Math.PI * 0.05 * Math.pow(0.01, 1.5);
        assertThat(lip.discharge(0.01)).isCloseTo(weir, within(1e-12));
        assertThat(lip.discharge(0.1)).isCloseTo(new Orifice(Math.PI / 4 * 0.0025, 0.6).discharge(0.1), within(1e-12));
    }

    @Test
    void backflowStopsAtTheLowestOpeningThatDrawsAir() {
        assertThat(Drain.backflowVolume(0.5, 0.62, 0.60, 0.58, 0.002)).isCloseTo(0.022, within(1e-12));
        assertThat(Drain.backflowVolume(0.5, 0.62, 0.60, 0.61, 0.002)).isCloseTo(0.012, within(1e-12));
        assertThat(Drain.backflowVolume(0.5, 0.50, 0.60, 0.58, 0)).isZero();
        assertThat(Drain.selfVenting(Drain.selfVentingBore(1e-4))).isCloseTo(1e-4, within(1e-15));
    }
}
