package io.github.weirwise.internal.physics.foam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Validation of the steady column against published limits, and of its two ways of solution against each other. */
class FoamColumnTest {
    private static final FoamLiquid SEA_WATER = new FoamLiquid(1023.3, 0.959e-3, 0.05);
    private static final double BASE = 0.215;
    private static final double LIP = 0.405;

    /** A column of 110 mm bore with a cone of 100 mm to a neck of 50 mm. */
    private static double funnel(double heightM) {
        double along = Math.max(0, Math.min(1, (heightM - BASE) / 0.1));
        double bore = 0.11 - 0.06 * along;
        return Math.PI * bore * bore / 4;
    }

    private static FoamColumn tankFoam(double waterM, double litresPerHour, double lifeS, Venting venting) {
        return new FoamColumn(
                FoamColumnTest::funnel,
                waterM,
                LIP,
                litresPerHour / 3.6e6,
                SEA_WATER,
                FoamPermeability.toPacking(0.0033, 2),
                Capillarity.DISORDERED,
                new BubbleGrowth(0.4e-3, 1.1e-3, 100),
                new FoamLife(lifeS, 1.2),
                venting);
    }

    /** Stevenson 2007: foam that does not break delivers the greatest liquid flux that its wetness allows. */
    @Test
    void foamThatDoesNotBreakDeliversStevensonsEquilibriumFlux() {
        SplittableRandom random = new SplittableRandom(61);
        for (int i = 0; i < 60; i++) {
            double exponent = i % 2 == 0 ? 2 : random.nextDouble(1.5, 2.5);
            double radius = random.nextDouble(0.3e-3, 1.5e-3);
            double speed = Drainage.speed(1023.3, 0.959e-3, radius, 0.0033);
            double gasFlux = random.nextDouble(0.01, 0.9) * RisenFoam.floodingGasFlux(speed, exponent);
            double area = 1e-3;
            FoamColumn column = new FoamColumn(
                    BoreShape.tube(area),
                    0,
                    0.005,
                    gasFlux * area,
                    SEA_WATER,
                    FoamPermeability.powerLaw(0.0033, exponent),
                    Capillarity.NONE,
                    BubbleGrowth.none(radius),
                    new FoamLife(1e6, 3),
                    Venting.THROUGH_FOAM);
            RisenFoam.Equilibrium published = RisenFoam.equilibrium(gasFlux, speed, exponent);
            SettledColumn settled = column.settled();
            assertThat(settled.flooded()).isFalse();
            assertThat(settled.liquidOverLipM3PerS() / area / published.liquidFluxMPerS())
                    .as("n %s, jg/K %s", exponent, gasFlux / speed)
                    .isCloseTo(1, within(0.01));
        }
    }

    /** Bikerman 1938: a foam that all breaks holds the gas of one mean life, V = Q Sigma, whatever the vessel's shape. */
    @Test
    void foamThatAllBreaksHoldsTheGasOfOneMeanLife() {
        SplittableRandom random = new SplittableRandom(62);
        for (int i = 0; i < 40; i++) {
            double litresPerHour = random.nextDouble(20, 70);
            double life = random.nextDouble(10, 20);
            SettledColumn settled = tankFoam(random.nextDouble(0.19, 0.22), litresPerHour, life, Venting.THROUGH_FOAM)
                    .settled();
            assertThat(settled.reachesLip()).isFalse();
            assertThat(settled.topM()).isLessThan(LIP);
            assertThat(settled.liquidOverLipM3PerS()).isZero();
            assertThat(settled.heldGasM3()).isCloseTo(litresPerHour / 3.6e6 * life, withinPercentage(0.001));
        }
    }

    /** What lives to the lip follows from the gas that the foam holds, by the law of lives alone. */
    @Test
    void theGasAtTheLipIsWhatOutlivesTheFoamBelow() {
        FoamColumn column = tankFoam(0.237, 150, 24, Venting.THROUGH_FOAM);
        SettledColumn settled = column.settled();
        double share = column.life().survivingShare(column.gasFlowM3PerS(), settled.heldGasM3());
        assertThat(settled.gasOverLipM3PerS() / column.gasFlowM3PerS()).isCloseTo(share, withinPercentage(0.001));
        FoamColumnRun run = FoamColumnRun.from(column, 60, z -> 0.2).untilSteady(60, 1e-4);
        double runShare = column.life().survivingShare(column.gasFlowM3PerS(), run.heldGasM3());
        assertThat(run.gasAtLipM3PerS() / column.gasFlowM3PerS()).isCloseTo(runShare, withinPercentage(1));
    }

    /** Two ways that share only the local laws: marching upward, and cells followed in time until nothing changes. */
    @Test
    void marchingUpwardAndFollowingInTimeGiveTheSameColumn() {
        for (double waterM : new double[] {0.225, 0.245}) {
            FoamColumn column = tankFoam(waterM, 150, 24, Venting.THROUGH_FOAM);
            SettledColumn settled = column.settled();
            FoamColumnRun run = FoamColumnRun.from(column, 80, z -> 0.2).untilSteady(60, 1e-4);
            assertThat(run.liquidOverLipM3PerS()).isCloseTo(settled.liquidOverLipM3PerS(), withinPercentage(3));
            assertThat(run.heldGasM3()).isCloseTo(settled.heldGasM3(), withinPercentage(0.2));
            assertThat(run.heldLiquidHeadM()).isCloseTo(settled.heldLiquidHeadM(), withinPercentage(0.5));
            for (FoamSlice slice : run.slices()) {
                assertThat(slice.liquidFraction())
                        .as("%s", slice)
                        .isCloseTo(settled.liquidFractionAt(slice.heightM()), within(0.012));
            }
        }
    }

    /** At the base fine bubbles and films at rest make a wet froth near packing that thins upward; nothing is cut off. */
    @Test
    void theFunnelBaseHoldsAWetFrothAndTheLipDryFoam() {
        SettledColumn settled = tankFoam(0.237, 150, 24, Venting.THROUGH_FOAM).settled();
        assertThat(settled.slices().get(0).liquidFraction()).isCloseTo(0.36, within(1e-6));
        assertThat(settled.liquidFractionAt(0.245)).isBetween(0.25, 0.36);
        assertThat(settled.lipFraction()).isBetween(0.003, 0.05);
        assertThat(2e3 * settled.lipRadiusM()).isBetween(1.5, 3.0);
        assertThat(settled.flooded()).isFalse();
    }

    /** With the gas conserved all of it must pass the neck: foam at centimetres a second, litres of liquid a day. */
    @Test
    void whereTheGasStaysInTheFoamTheNeckCannotCreep() {
        for (Venting venting : new Venting[] {Venting.AT_TOP, Venting.BY_MERGING}) {
            SettledColumn settled = tankFoam(0.237, 150, 24, venting).settled();
            FoamSlice lip = settled.slices().get(settled.slices().size() - 1);
            assertThat(lip.gasFlowM3PerS()).isCloseTo(150 / 3.6e6, withinPercentage(1e-6));
            assertThat(lip.bubbleSpeedMPerS()).isGreaterThan(0.02);
            assertThat(settled.liquidOverLipM3PerS() * 1e6 * 86400).isGreaterThan(1e5);
        }
    }

    /** Relations over 200 seeded columns: no NaN, shares within limits, and more gas, life or water gives more liquid. */
    @Test
    void moreGasLifeOrWaterNeverGivesLessSkimmate() {
        SplittableRandom random = new SplittableRandom(63);
        for (int i = 0; i < 50; i++) {
            double water = random.nextDouble(0.225, 0.25);
            double air = random.nextDouble(120, 190);
            double life = random.nextDouble(18, 30);
            double amount = amount(water, air, life);
            assertThat(amount(water + 0.001, air, life)).isGreaterThanOrEqualTo(amount);
            assertThat(amount(water, air * 1.01, life)).isGreaterThanOrEqualTo(amount);
            assertThat(amount(water, air, life * 1.01)).isGreaterThanOrEqualTo(amount);
        }
    }

    private static double amount(double water, double air, double life) {
        SettledColumn settled = tankFoam(water, air, life, Venting.THROUGH_FOAM).settled(1e-6);
        assertThat(settled.liquidOverLipM3PerS()).isNotNaN().isNotNegative();
        assertThat(settled.meanLiquidFraction()).isBetween(0.01, 0.5);
        return settled.liquidOverLipM3PerS();
    }
}
