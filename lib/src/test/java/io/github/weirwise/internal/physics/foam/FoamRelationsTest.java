package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.weirwise.internal.physics.bubbles.TerminalSpeed;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold between numbers, whatever the numbers are: 60,000 seeded points. */
class FoamRelationsTest {
    private static final int POINTS = 20_000;

    @Test
    void moreGasMakesWetterFoamAndFasterDrainageDrier() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < POINTS; i++) {
            double n = i % 2 == 0 ? 2 : random.nextDouble(1.4, 2.6);
            double k = Math.exp(random.nextDouble(-9, 0));
            double gas = random.nextDouble(0.001, 0.95) * RisenFoam.floodingGasFlux(k, n);
            RisenFoam.Equilibrium foam = RisenFoam.equilibrium(gas, k, n);
            RisenFoam.Equilibrium more = RisenFoam.equilibrium(gas * 1.02, k, n);
            assertThat(foam.flooded()).isFalse();
            assertThat(more.liquidFraction()).isGreaterThan(foam.liquidFraction());
            assertThat(more.liquidFluxMPerS()).isGreaterThan(foam.liquidFluxMPerS());
            assertThat(RisingFoam.liquidFraction(gas, k * 1.02, n)).isLessThan(foam.liquidFraction());
            double eps = foam.liquidFraction();
            double slope = gas / ((1 - eps) * (1 - eps)) - n * k * Math.pow(eps, n - 1);
            assertThat(slope).isCloseTo(0, within(1e-8 * gas + 1e-15));
        }
    }

    /** Stevenson 2007, dry limit for n = 2: eps = jg/(2 K) and flux = jg^2/(4 K). */
    @Test
    void dryFoamHasTheClosedForm() {
        double k = 0.1;
        double gas = 1e-5;
        RisenFoam.Equilibrium foam = RisenFoam.equilibrium(gas, k);
        assertThat(foam.liquidFraction() / (gas / (2 * k))).isCloseTo(1, within(2e-4));
        assertThat(foam.liquidFluxMPerS() / (gas * gas / (4 * k))).isCloseTo(1, within(2e-4));
    }

    @Test
    void aBubbleGathersNeverMoreThanArrivesNorMoreThanItHolds() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < POINTS; i++) {
            Adsorption isotherm = new Adsorption(random.nextDouble(1e-6, 4e-6), Math.exp(random.nextDouble(2, 8)));
            double c = Math.exp(random.nextDouble(-9, -2));
            GatheredLoad uptake = new GatheredLoad(isotherm, Math.exp(random.nextDouble(-14, -9)));
            double time = Math.exp(random.nextDouble(-3, 9));
            double load = uptake.load(c, time);
            assertThat(load)
                    .isBetween(0.0, isotherm.load(c) * (1 + 1e-12))
                    .isLessThanOrEqualTo(uptake.transferSpeedMPerS() * c * time * (1 + 1e-9));
            assertThat(uptake.load(c, 2 * time)).isGreaterThanOrEqualTo(load);
            double share = load / isotherm.load(c);
            if (share < 0.999) {
                assertThat(uptake.timeTo(c, share) / time).isCloseTo(1, within(1e-6));
            }
        }
    }

    /** Ward and Tordai 1946: seconds are too short; a bubble of 0.8 mm gathers a small share of what it could hold. */
    @Test
    void inDiluteWaterTransportAndNotTheIsothermLimitsTheLoad() {
        double speed = TerminalSpeed.contaminated(0.0008, 1023, 0.96e-3);
        double transfer = BubbleUptake.transferSpeed(speed, 0.0008, 0.94e-6, BubbleUptake.PROTEIN_DIFFUSIVITY);
        Adsorption isotherm = new Adsorption(2e-6, 200);
        double share = new GatheredLoad(isotherm, transfer).load(0.002, 2) / isotherm.load(0.002);
        assertThat(share).isBetween(0.01, 0.5);
        assertThat(new GatheredLoad(isotherm, transfer).load(0.002, 600) / isotherm.load(0.002))
                .isGreaterThan(0.9);
    }

    @Test
    void staticFoamHoldsTheIntegralOfItsProfile() {
        SplittableRandom random = new SplittableRandom(43);
        for (int i = 0; i < 200; i++) {
            CapillaryProfile profile =
                    new CapillaryProfile(random.nextDouble(0.04, 0.075), 1023, random.nextDouble(2e-4, 2e-3), 0.36);
            double height = random.nextDouble(0.01, 0.2);
            int parts = 2000;
            double sum = 0;
            for (int j = 0; j < parts; j++) {
                sum += profile.liquidFraction((j + 0.5) * height / parts) * height / parts;
            }
            assertThat(sum / profile.heldLiquid(height)).isCloseTo(1, within(1e-3));
        }
    }

    @Test
    void ageShareAndVolumeRunTheSameWay() {
        SplittableRandom random = new SplittableRandom(44);
        for (int i = 0; i < POINTS; i++) {
            FoamLife life = new FoamLife(random.nextDouble(5, 60), random.nextDouble(1.05, 3));
            double gas = random.nextDouble(1e-5, 1e-4);
            double volume = random.nextDouble(0, 1.1) * gas * life.meanLifeS();
            double share = life.survivingShare(gas, volume);
            assertThat(life.survivingShare(gas, volume * 1.01)).isLessThanOrEqualTo(share);
            assertThat(life.survivingShare(gas * 1.01, volume)).isGreaterThanOrEqualTo(share);
            assertThat(new FoamLife(life.meanLifeS() * 1.01, life.alpha()).survivingShare(gas, volume))
                    .isGreaterThanOrEqualTo(share);
            assertThat(life.ageAtTopS(gas, volume * 1.01)).isGreaterThanOrEqualTo(life.ageAtTopS(gas, volume));
        }
    }

    @Test
    void osmoticPressureFallsToNothingWhereBubblesPart() {
        for (OsmoticPressure foam : OsmoticPressure.values()) {
            double last = Double.MAX_VALUE;
            for (double phi = 0.001; phi < foam.wettestFraction(); phi += 0.001) {
                assertThat(foam.reduced(phi)).isBetween(0.0, last);
                last = foam.reduced(phi);
            }
            assertThat(foam.pascal(0.5, 0.07, 0.001)).isZero();
        }
    }

    /** The closed solutions fulfil the foam drainage equation they come from, by finite differences. */
    @Test
    void theSolitaryWaveSolvesTheDrainageEquation() {
        double v = 1.7;
        double h = 1e-3;
        for (double x = 0.1; x < 3; x += 0.1) {
            double rate = (wave(v, x + v * h) - wave(v, x - v * h)) / (2 * h);
            double fluxSlope = (flux(v, x + h) - flux(v, x - h)) / (2 * h);
            // x here runs up behind the front, so the equation's x derivative changes sign.
            assertThat(rate - fluxSlope).isCloseTo(0, within(1e-4));
        }
    }

    private static double wave(double v, double behind) {
        return DrainageSolutions.solitaryWave(v, behind);
    }

    private static double flux(double v, double behind) {
        double h = 1e-4;
        double slope = -(wave(v, behind + h) - wave(v, behind - h)) / (2 * h);
        double a = wave(v, behind);
        return a * a - Math.sqrt(a) / 2 * slope;
    }

    /** Koehler, Hilgenfeldt and Stone 2000 print K1 = 6.3e-3 and the fraction 0.171 (from memory). */
    @Test
    void plateauBorderConstants() {
        assertThat(PlateauBorder.FRACTION).isCloseTo(0.171, within(0.0005));
        assertThat(PlateauBorder.PERMEABILITY).isCloseTo(6.3e-3, within(0.05e-3));
        assertThat(PlateauBorder.RIGID_MOBILITY).isCloseTo(Drainage.RIGID_FILMS, within(0.0001));
        assertThat(PlateauBorder.wallRadius(0.001, 0.01)).isCloseTo(0.718e-3 * Math.sqrt(0.01 / 0.171), within(1e-6));
    }
}
