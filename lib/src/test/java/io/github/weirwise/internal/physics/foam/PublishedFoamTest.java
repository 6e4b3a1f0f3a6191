package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Validation of the rising foam against published examples. */
class PublishedFoamTest {
    /**
     * Stevenson &amp; Li 2014, Foam Fractionation: Principles and Process Design, sec. 3.5 (again in 5.5): mu 1.0 mPa s, rho 1000,
     * jg 8 mm/s, rb 0.5 mm, "typical" drainage, here m = 0.016 and n = 2.
     */
    @Test
    void stevensonsWorkedExample() {
        double drainage = Drainage.speed(1000, 1e-3, 0.5e-3, 0.016);
        RisenFoam.Equilibrium foam = RisenFoam.equilibrium(8e-3, drainage);
        assertThat(foam.liquidFluxMPerS()).isCloseTo(0.533e-3, withinPercentage(0.5));
        assertThat(foam.liquidFraction()).isCloseTo(0.137, withinPercentage(0.5));
        assertThat(foam.flooded()).isFalse();
    }

    /** Wang, Evans &amp; Stevenson, Flooding in a vertically rising gas-liquid foam: no wetter than (n - 1)/(n + 1). */
    @Test
    void aStableRisingFoamIsNoWetterThanItsLimit() {
        for (double n : new double[] {1.5, 2, 2.5, 3}) {
            double drainage = 0.04;
            double limit = RisenFoam.floodingGasFlux(drainage, n);
            assertThat(RisenFoam.equilibrium(0.9999999 * limit, drainage, n).liquidFraction())
                    .isCloseTo((n - 1) / (n + 1), within(1e-3));
        }
    }

    /**
     * Neethling, Lee &amp; Cilliers 2003, Minerals Engineering 16:1123-1130, recalled: at a fixed share of gas that overflows, the liquid
     * goes with the square of the gas. The dry rising foam does the same.
     */
    @Test
    void atAFixedShareTheLiquidGoesWithTheSquareOfTheGas() {
        double drainage = Drainage.speed(1023, 0.96e-3, 1.1e-3, 0.0033);
        double one = RisenFoam.equilibrium(2e-4, drainage).liquidFluxMPerS();
        double two = RisenFoam.equilibrium(4e-4, drainage).liquidFluxMPerS();
        assertThat(two / one).isCloseTo(4, within(0.1));
    }
}
