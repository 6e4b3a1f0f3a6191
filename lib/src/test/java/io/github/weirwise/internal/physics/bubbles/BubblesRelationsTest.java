package io.github.weirwise.internal.physics.bubbles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.bubbles.RivalSpeeds.Surface;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between numbers, whatever the numbers are: 60,000 seeded points. */
class BubblesRelationsTest {
    private static final int POINTS = 20_000;

    @Test
    void largerBubblesAndCleanerSurfacesRiseFaster() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < POINTS; i++) {
            double d = random.nextDouble(2e-5, 3e-3);
            double rho = random.nextDouble(990, 1030);
            double mu = random.nextDouble(0.7e-3, 1.3e-3);
            double sigma = random.nextDouble(0.045, 0.075);
            double dirty = TerminalSpeed.contaminated(d, rho, mu);
            assertThat(TerminalSpeed.contaminated(d * 1.01, rho, mu)).isGreaterThan(dirty);
            assertThat(TerminalSpeed.contaminated(d, rho, mu * 1.01)).isLessThan(dirty);
            double full = RivalSpeeds.tomiyama(d, rho, mu, sigma, Surface.FULLY_CONTAMINATED);
            double slight = RivalSpeeds.tomiyama(d, rho, mu, sigma, Surface.SLIGHTLY_CONTAMINATED);
            double pure = RivalSpeeds.tomiyama(d, rho, mu, sigma, Surface.PURE);
            assertThat(full).isLessThanOrEqualTo(slight).isLessThanOrEqualTo(dirty * (1 + 1e-9));
            assertThat(slight).isLessThanOrEqualTo(pure);
            if (RivalSpeeds.reynolds(dirty, d, rho, mu) < 400) {
                assertThat(RivalSpeeds.cliftSphere(d, rho, mu) / dirty).isBetween(0.95, 1.045);
            }
        }
    }

    /** Stokes 1851: a tiny rigid sphere moves at d^2 g (rho - rho air)/(18 mu). */
    @Test
    void tinyBubblesFollowStokes() {
        double d = 2e-5;
        double stokes = d * d * 9.80665 * (1000 - 1.2) / (18 * 1e-3);
        assertThat(TerminalSpeed.contaminated(d, 1000, 1e-3) / stokes).isCloseTo(1, within(0.005));
    }

    @Test
    void moreGasOrMoreDownflowMeansMoreHoldup() {
        SplittableRandom random = new SplittableRandom(32);
        int compared = 0;
        for (int i = 0; i < POINTS; i++) {
            double speed = random.nextDouble(0.02, 0.25);
            double n = random.nextDouble(1.5, 3);
            double liquid = speed * random.nextDouble(-0.3, 0.3);
            double gas = speed * random.nextDouble(0.001, 0.25);
            double e = GasHoldup.richardsonZaki(gas, liquid, speed, n);
            double more = GasHoldup.richardsonZaki(gas * 1.02, liquid, speed, n);
            double down = GasHoldup.richardsonZaki(gas, liquid - 0.01 * speed, speed, n);
            if (!Double.isNaN(more)) {
                assertThat(more).isGreaterThan(e);
                compared++;
            }
            if (!Double.isNaN(down)) {
                assertThat(down).isGreaterThan(e);
            }
        }
        assertThat(compared).isGreaterThan(POINTS / 2);
    }

    @Test
    void airDrawFallsWithDepthWearAndSaltInTheLine() {
        SplittableRandom random = new SplittableRandom(33);
        for (int i = 0; i < POINTS; i++) {
            AirDraw draw =
                    new AirDraw(4e-5, random.nextDouble(0, 0.3), random.nextDouble(0.5, 2), random.nextDouble(0, 0.9));
            double c = random.nextDouble(0.05, 1);
            double o = random.nextDouble(0.05, 1);
            double depth = random.nextDouble(0, 0.5);
            double air = draw.airFlow(c, o, depth);
            assertThat(air).isGreaterThanOrEqualTo(0);
            assertThat(draw.airFlow(c * 0.95, o, depth)).isLessThanOrEqualTo(air);
            assertThat(draw.airFlow(c, o * 0.95, depth)).isLessThanOrEqualTo(air);
            assertThat(draw.airFlow(c, o, depth + 0.01)).isLessThanOrEqualTo(air);
            assertThat(draw.airFlow(1, 1, draw.ratedDepthM())).isCloseTo(4e-5, within(1e-17));
            assertThat(draw.airFlow(c, 0, depth)).isZero();
            assertThat(draw.airFlow(1, o, draw.stallDepthM())).isZero();
        }
    }

    /** Craig, Ninham and Pashley 1993 and Anguelova and Huq 2017 bracket the step. */
    @Test
    void saltStopsMergingWithinThePublishedStep() {
        assertThat(Coalescence.inhibition(0)).isZero();
        assertThat(Coalescence.inhibition(Coalescence.STEP_SALINITY.low())).isLessThan(0.5);
        assertThat(Coalescence.inhibition(Coalescence.STEP_SALINITY.high())).isGreaterThan(0.95);
        assertThat(Coalescence.diameter(0.003, 0.0008, 0)).isEqualTo(0.003);
        double last = 1;
        for (double s = 0; s < 40; s += 0.5) {
            double d = Coalescence.diameter(0.003, 0.0008, s);
            assertThat(d).isBetween(0.0008, 0.003).isLessThan(last);
            last = d;
        }
    }

    @Test
    void surfaceOfBubbles() {
        assertThat(InterfacialArea.perVolume(0.1, 0.001)).isCloseTo(600, within(1e-9));
        assertThat(InterfacialArea.perSecond(1e-5, 0.001)).isCloseTo(0.06, within(1e-12));
    }
}
