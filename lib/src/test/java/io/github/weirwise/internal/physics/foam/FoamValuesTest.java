package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.report.OutOfRangeException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The small laws and answers of the foam floor: pressures, slopes, means, what lies between two slices. */
class FoamValuesTest {
    private static final FoamLiquid WATER = new FoamLiquid(1023, 0.96e-3, 0.05);
    private static final FoamColumn COLUMN = new FoamColumn(
            BoreShape.tube(2e-3),
            0,
            0.15,
            4e-5,
            WATER,
            FoamPermeability.toPacking(Drainage.RIGID_FILMS, 2),
            Capillarity.DISORDERED,
            new BubbleGrowth(0.0004, 0.0011, 100),
            new FoamLife(30, 1.2),
            Venting.THROUGH_FOAM);

    /** Laplace: the pressure goes with tension over radius; its form is that of Maestro et al. 2013. */
    @Test
    void osmoticPressureIsTensionOverRadiusTimesItsReducedForm() {
        for (OsmoticPressure law : OsmoticPressure.values()) {
            double reduced = law.reduced(0.1);
            assertThat(reduced)
                    .isCloseTo(
                            (law == OsmoticPressure.ORDERED ? 7.3 : 3.2)
                                    * Math.pow(law.wettestFraction() - 0.1, 2)
                                    / Math.sqrt(0.1),
                            within(1e-12));
            assertThat(law.pascal(0.1, 0.05, 0.0005)).isCloseTo(reduced * 100, within(1e-9));
            assertThat(law.pascal(law.wettestFraction(), 0.05, 0.0005)).isZero();
            assertThat(law.pascal(0.5, 0.05, 0.0005)).isZero();
        }
    }

    @Test
    void drainageFluxIsAPowerOfTheWetness() {
        assertThat(RisenFoam.flux(2, 2, 0.1)).isCloseTo(0.02, within(1e-12));
        assertThat(RisenFoam.flux(3, 1.5, 0.25)).isCloseTo(0.375, within(1e-12));
        assertThat(RisenFoam.flux(3, 1.5, 0)).isZero();
    }

    @Test
    void theSlopeOfThePermeabilityIsItsDerivative() {
        for (FoamPermeability law : List.of(
                FoamPermeability.powerLaw(0.0033, 2),
                FoamPermeability.powerLaw(0.0033, 1.6),
                FoamPermeability.toPacking(0.0033, 2),
                FoamPermeability.toPacking(0.016, 1.5))) {
            for (double eps : new double[] {0.01, 0.1, 0.26, 0.36, 0.6}) {
                double step = 1e-6 * eps;
                double slope = (law.flux(eps + step) - law.flux(eps - step)) / (2 * step);
                assertThat(law.slope(eps)).isCloseTo(slope, withinPercentage(1e-4));
            }
            assertThat(law.slope(0)).isZero();
        }
    }

    @Test
    void aPermeabilityThatGrowsInfiniteIsRefused() {
        assertThatThrownBy(() -> new FoamPermeability(0.0033, 2, 2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FoamPermeability(0.0033, 2, 2.1, 1))
                .hasMessageContaining("keep bend^2 below 4 curve");
        assertThat(new FoamPermeability(0.0033, 2, 1.99, 1).flux(0.1)).isPositive();
        assertThat(new FoamPermeability(0.0033, 2, 0, 0).flux(0.1)).isCloseTo(0.01, within(1e-12));
    }

    @Test
    void betweenTwoSlicesTheWetnessIsAStraightLineAndOutsideThatOfTheEnd() {
        SettledColumn column = new SettledColumn(
                true,
                0.2,
                1e-6,
                1e-9,
                0.01,
                50,
                0.001,
                3e-4,
                1e-4,
                0.02,
                false,
                List.of(slice(0, 0.36), slice(0.1, 0.16), slice(0.1, 0.12), slice(0.2, 0.02)));
        assertThat(column.liquidFractionAt(-1)).isEqualTo(0.36);
        assertThat(column.liquidFractionAt(0)).isEqualTo(0.36);
        assertThat(column.liquidFractionAt(0.025)).isCloseTo(0.31, within(1e-12));
        assertThat(column.liquidFractionAt(0.1)).isCloseTo(0.16, within(1e-12));
        assertThat(column.liquidFractionAt(0.15)).isCloseTo(0.07, within(1e-12));
        assertThat(column.liquidFractionAt(0.3)).isEqualTo(0.02);
        assertThat(column.meanLiquidFraction()).isCloseTo(0.25, within(1e-12));
    }

    private static FoamSlice slice(double heightM, double fraction) {
        return new FoamSlice(heightM, fraction, 1e-6, 1e-3, 10, 0.001);
    }

    @Test
    void theSketchsMeanWetnessIsLiquidOverAll() {
        FoamSketch sketch = COLUMN.sketched();
        assertThat(sketch.meanLiquidFraction())
                .isCloseTo(sketch.heldLiquidM3() / (sketch.heldGasM3() + sketch.heldLiquidM3()), within(1e-12))
                .isBetween(0.001, 0.36);
        assertThat(sketch.heldGasM3() + sketch.heldLiquidM3()).isCloseTo(0.15 * 2e-3, withinPercentage(1));
    }

    @Test
    void withChangesOneThingAlone() {
        FoamLife other = new FoamLife(20, 1.5);
        assertThat(COLUMN.withLife(other))
                .isEqualTo(new FoamColumn(
                        COLUMN.bore(),
                        0,
                        0.15,
                        4e-5,
                        WATER,
                        COLUMN.permeability(),
                        COLUMN.capillarity(),
                        COLUMN.growth(),
                        other,
                        COLUMN.venting()));
        assertThat(COLUMN.withWaterM(0.05).waterM()).isEqualTo(0.05);
        assertThat(COLUMN.withWaterM(0.05).withWaterM(0)).isEqualTo(COLUMN);
        assertThatThrownBy(() -> COLUMN.withWaterM(0.15)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aSketchKnowsOnlyGasThatVentsThroughTheFoam() {
        FoamColumn merging = new FoamColumn(
                COLUMN.bore(),
                0,
                0.15,
                4e-5,
                WATER,
                COLUMN.permeability(),
                COLUMN.capillarity(),
                COLUMN.growth(),
                COLUMN.life(),
                Venting.BY_MERGING);
        assertThatThrownBy(merging::sketched)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("settled");
    }

    /** Liquid, gas and room of a run are one: the cells share the bore's volume. */
    @Test
    void aRunHoldsAsMuchAsItsRoom() {
        FoamColumnRun run = FoamColumnRun.from(COLUMN, 20, height -> 0.05);
        assertThat(run.heldGasM3() + run.heldLiquidM3()).isCloseTo(0.15 * 2e-3, withinPercentage(1e-9));
        assertThat(run.heldLiquidM3()).isCloseTo(0.05 * 0.15 * 2e-3, withinPercentage(1e-9));
        assertThat(run.heldLiquidHeadM()).isCloseTo(0.05 * 0.15, withinPercentage(1e-9));
        assertThat(run.slices()).hasSize(20);
        assertThat(run.slices().get(0).heightM()).isCloseTo(0.15 / 40, within(1e-12));
        assertThat(run.timeS()).isZero();
        assertThat(run.after(1).timeS()).isEqualTo(1);
    }
}
