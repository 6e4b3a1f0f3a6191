package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** The quick drawing of a column: exact where it can be checked, near the full solution elsewhere. */
class FoamSketchTest {
    private static final FoamLiquid WATER = new FoamLiquid(1023, 0.96e-3, 0.053);
    private static final double AREA = 0.002;
    private static final double GAS = 1.2e-5;

    private static FoamColumn column(double height, FoamPermeability permeability, FoamLife life) {
        return new FoamColumn(
                BoreShape.tube(AREA),
                0,
                height,
                GAS,
                WATER,
                permeability,
                Capillarity.DISORDERED,
                new BubbleGrowth(4e-4, 1.1e-3, 100),
                life,
                Venting.THROUGH_FOAM);
    }

    private static FoamColumn tankFoam(double height) {
        return column(height, FoamPermeability.toPacking(0.0033, 2), new FoamLife(24, 1.2));
    }

    /** Bikerman: what lives to the lip follows from the gas that is held, whatever the foam looks like. */
    @Test
    void theShareThatOutlivesTheFoamFollowsFromTheGasItHolds() {
        FoamColumn column = tankFoam(0.12);
        FoamSketch sketch = column.sketched();
        assertThat(sketch.shareAtLip())
                .isCloseTo(column.life().survivingShare(GAS, sketch.heldGasM3()), withinPercentage(1e-9));
        assertThat(sketch.lipAgeS())
                .isCloseTo(column.life().ageAtTopS(GAS, sketch.heldGasM3()), withinPercentage(1e-9));
        assertThat(sketch.heldGasM3() + sketch.heldLiquidM3()).isCloseTo(0.12 * AREA, withinPercentage(1e-9));
        assertThat(sketch.heldLiquidHeadM() * AREA).isCloseTo(sketch.heldLiquidM3(), withinPercentage(1e-9));
    }

    @Test
    void theLipOfDryFoamPassesStevensonsFlux() {
        FoamColumn column = column(0.12, FoamPermeability.powerLaw(0.0033, 2), new FoamLife(24, 1.2));
        FoamSketch sketch = column.sketched();
        double speed = 0.0033 * 1023 * 9.80665 * sketch.lipRadiusM() * sketch.lipRadiusM() / 0.96e-3;
        RisenFoam.Equilibrium stevenson = RisenFoam.equilibrium(GAS * sketch.shareAtLip() / AREA, speed);
        assertThat(sketch.lipFraction()).isCloseTo(stevenson.liquidFraction(), withinPercentage(1e-4));
        assertThat(sketch.liquidOverLipM3PerS()).isCloseTo(AREA * stevenson.liquidFluxMPerS(), withinPercentage(1e-4));
    }

    @Test
    void itHoldsAboutTheGasOfTheFullColumn() {
        for (double height : new double[] {0.10, 0.12, 0.14}) {
            for (double exponent : new double[] {1.7, 2, 2.4}) {
                FoamColumn column = column(height, FoamPermeability.toPacking(0.0033, exponent), new FoamLife(24, 1.2));
                SettledColumn settled = column.settled();
                FoamSketch sketch = column.sketched();
                assertThat(sketch.heldGasM3())
                        .as("height %s, exponent %s", height, exponent)
                        .isCloseTo(settled.heldGasM3(), withinPercentage(3));
            }
        }
    }

    @Test
    void moreFoamOverTheWaterGivesLessDrierOlderFoamAtTheLip() {
        FoamSketch lower = tankFoam(0.09).sketched();
        for (int mm = 92; mm <= 150; mm += 2) {
            FoamSketch higher = tankFoam(mm / 1000.0).sketched();
            assertThat(higher.shareAtLip()).isLessThan(lower.shareAtLip());
            assertThat(higher.lipAgeS()).isGreaterThan(lower.lipAgeS());
            assertThat(higher.lipFraction()).isLessThan(lower.lipFraction());
            assertThat(higher.liquidOverLipM3PerS()).isLessThan(lower.liquidOverLipM3PerS());
            lower = higher;
        }
    }

    @Test
    void foamThatAllBurstsEndsBelowTheLipWhereBikermanPutsItsTop() {
        FoamColumn column = tankFoam(0.6);
        FoamSketch sketch = column.sketched();
        assertThat(sketch.shareAtLip()).isZero();
        assertThat(sketch.liquidOverLipM3PerS()).isZero();
        assertThat(sketch.lipAgeS()).isInfinite();
        double foam = GAS * 24 / AREA / (1 - sketch.meanLiquidFraction());
        assertThat(sketch.topM()).isCloseTo(foam, within(0.6 / 32));
    }

    @Test
    void otherWaysForTheGasAndNoGasAreRefused() {
        FoamColumn column = tankFoam(0.12);
        FoamColumn merging = new FoamColumn(
                column.bore(),
                0,
                0.12,
                GAS,
                WATER,
                column.permeability(),
                column.capillarity(),
                column.growth(),
                column.life(),
                Venting.BY_MERGING);
        assertThatThrownBy(merging::sketched).hasMessageContaining("BY_MERGING");
        FoamColumn still = new FoamColumn(
                column.bore(),
                0,
                0.12,
                0,
                WATER,
                column.permeability(),
                column.capillarity(),
                column.growth(),
                column.life(),
                Venting.THROUGH_FOAM);
        assertThatThrownBy(still::sketched).hasMessageContaining("gasFlowM3PerS");
    }
}
