package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/** Validation: the column in time against exact solutions of the foam drainage equation. */
class FoamColumnRunTest {
    private static final FoamLiquid WATER = new FoamLiquid(1000, 1e-3, 0.05);
    private static final FoamLife LONG = new FoamLife(1e6, 2);

    /** Foam without gas from below in which nothing bursts below the top. */
    private static FoamColumn quiet(double heightM, double radiusM, double exponent, Capillarity capillarity) {
        return new FoamColumn(
                BoreShape.tube(1e-3),
                0,
                heightM,
                0,
                WATER,
                FoamPermeability.powerLaw(0.0033, exponent),
                capillarity,
                BubbleGrowth.none(radiusM),
                LONG,
                Venting.AT_TOP);
    }

    private static double drainage(double radiusM) {
        return Drainage.speed(1000, 1e-3, radiusM, 0.0033);
    }

    /** Verbist, Weaire and Kraynik 1996: the wave of wetness keeps its shape tanh^2 and its speed. */
    @Test
    void aWaveOfWetnessRunsDownAsTheSolitaryWaveDoes() {
        double radius = 1e-3;
        double wetness = 1e-4;
        // In dry foam the disordered osmotic pressure is k phi_c^2 gamma/(r sqrt eps), which sets the equation's own
        // length.
        double strength = 3.2 * 0.36 * 0.36;
        double length = 0.05 / (1000 * 9.80665 * radius) * strength / Math.sqrt(wetness);
        double time = length / (drainage(radius) * wetness);
        double height = 26 * length;
        double front = 16 * length;
        FoamColumn column = quiet(height, radius, 2, Capillarity.DISORDERED);
        FoamColumnRun start = FoamColumnRun.from(
                column, 130, z -> Math.max(1e-9, wetness * DrainageSolutions.solitaryWave(1, (z - front) / length)));
        List<FoamSlice> later = start.after(2 * time).slices();
        double worst = 0;
        for (FoamSlice slice : later) {
            double exact = DrainageSolutions.solitaryWave(1, (slice.heightM() - front) / length + 2);
            boolean farFromTheEnds = slice.heightM() > 8 * length && slice.heightM() < 17 * length;
            if (farFromTheEnds) {
                worst = Math.max(worst, Math.abs(slice.liquidFraction() / wetness - exact));
            }
        }
        assertThat(worst).isLessThan(0.02);
    }

    /** Free drainage without suction: eps = (z/(n K t))^(1/(n - 1)), Koehler, Hilgenfeldt and Stone 1999 and earlier. */
    @Test
    void aFoamThatIsLeftAloneDrainsFromItsTop() {
        for (double exponent : new double[] {2, 1.5}) {
            double radius = 1e-3;
            double height = 0.2;
            double wetness = exponent == 2 ? 2e-3 : 1e-3;
            double speed = drainage(radius);
            double time = 2 * height / (exponent * speed * Math.pow(wetness, exponent - 1));
            FoamColumn column = quiet(height, radius, exponent, Capillarity.NONE);
            List<FoamSlice> drained =
                    FoamColumnRun.from(column, 250, z -> wetness).after(time).slices();
            for (FoamSlice slice : drained.subList(0, 150)) {
                double exact = DrainageSolutions.freeDrainage(height - slice.heightM(), time, speed, exponent);
                assertThat(slice.liquidFraction() / exact)
                        .as("n %s, %s", exponent, slice)
                        .isCloseTo(1, within(0.03));
            }
        }
    }

    /** At rest suction balances weight: z = integral of dPi/((1 - eps) rho g), Pi by Maestro et al. 2013. */
    @Test
    void aFoamOnItsWaterComesToRestWithTheStaticProfile() {
        double radius = 0.5e-3;
        FoamColumn column = quiet(0.03, radius, 2, Capillarity.DISORDERED);
        FoamColumnRun rest = FoamColumnRun.from(column, 20, z -> 0.1).after(4e3);
        double scale = 0.05 / (1000 * 9.80665 * radius);
        for (FoamSlice slice : rest.slices()) {
            double height = new IterativeLegendreGaussIntegrator(16, 1e-9, 1e-12)
                    .integrate(10_000, e -> pressureSlope(e) / (1 - e), slice.liquidFraction(), 0.36);
            assertThat(scale * height).as("%s", slice).isCloseTo(slice.heightM(), within(0.0006));
        }
    }

    /** -d/d eps of 3.2 (0.36 - eps)^2/sqrt(eps). */
    private static double pressureSlope(double fraction) {
        double rest = 0.36 - fraction;
        return 3.2 * (2 * rest / Math.sqrt(fraction) + 0.5 * rest * rest * Math.pow(fraction, -1.5));
    }

    /** Far above the water, where the foam is dry, the exact rest of the drainage equation holds: (a0^-1/2 + x)^-2. */
    @Test
    void dryFoamAtRestFollowsTheExactSolution() {
        double radius = 2e-3;
        FoamColumn column = quiet(0.06, radius, 2, Capillarity.DISORDERED);
        List<FoamSlice> rest =
                FoamColumnRun.from(column, 24, z -> 0.01).after(5e3).slices();
        double length = 3.2 * 0.36 * 0.36 * 0.05 / (1000 * 9.80665 * radius);
        FoamSlice low = rest.get(13);
        for (FoamSlice slice : rest.subList(14, 24)) {
            double exact = DrainageSolutions.atRest(low.liquidFraction(), (slice.heightM() - low.heightM()) / length);
            assertThat(slice.liquidFraction() / exact).as("%s", slice).isCloseTo(1, within(0.02));
        }
    }
}
