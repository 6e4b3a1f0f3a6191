package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.internal.physics.bubbles.GasHoldup;
import io.github.weirwise.internal.physics.foam.FoamLife;
import io.github.weirwise.internal.physics.foam.RisenFoam;
import io.github.weirwise.internal.physics.hydraulics.RectangularWeir;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The steady law, part by part, against the physics that it is put together from. */
class SteadyPartsTest {
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();

    private static SkimmerUnit with(FoamTraits traits, int columns) {
        return new SkimmerUnit(
                UNIT.name(),
                columns,
                UNIT.column(),
                UNIT.weir(),
                UNIT.cupMl(),
                UNIT.cupDrainLitresPerHour(),
                UNIT.ratedFlowLitresPerHour(),
                UNIT.ratedAirLitresPerHour(),
                traits,
                UNIT.target(),
                UNIT.layout());
    }

    private static FoamTraits traits(double drainageExponent, double holdupExponent, double feedShare) {
        return new FoamTraits(
                24,
                1.2,
                0.8,
                2.2,
                0.0033,
                drainageExponent,
                holdupExponent,
                0.1,
                0.3,
                feedShare,
                java.util.Optional.empty());
    }

    private static SteadyInputs inputs(SkimmerUnit unit, double crestMm) {
        return SteadyInputs.of(unit, unit.ratedSettings(crestMm));
    }

    @Test
    void theRoomAboveTheLevelIsTheIntegralOfTheBore() {
        SplittableRandom random = new SplittableRandom(3);
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            FoamSpace space = new FoamSpace(unit.column());
            double lipMm = unit.column().lipMm();
            for (int i = 0; i < 200; i++) {
                double levelMm = random.nextDouble(0, lipMm);
                int slices = 4000;
                double volume = 0;
                for (int s = 0; s < slices; s++) {
                    double bore = unit.column().boreAtMm(levelMm + (s + 0.5) / slices * (lipMm - levelMm)) / 1000;
                    volume += Math.PI / 4 * bore * bore * (lipMm - levelMm) / 1000 / slices;
                }
                assertThat(space.volumeAboveM3(levelMm / 1000)).isCloseTo(volume, withinPercentage(0.01));
            }
            assertThat(space.volumeAboveM3(lipMm / 1000 + 0.01)).isZero();
        }
    }

    @Test
    void headHoldupAndSurvivingGasAreThoseOfTheFormulas() {
        for (int columns : new int[] {1, 3}) {
            SkimmerUnit unit = with(traits(2.4, 2.3, 0.06), columns);
            SteadyInputs in = inputs(unit, 200);
            SteadyPoint point = new SteadyLaw(unit).at(in);
            double bore = Math.PI / 4 * 0.11 * 0.11;
            double air = in.airM3PerS() / columns;
            assertThat(point.headM())
                    .isCloseTo(new RectangularWeir(0.1, 0.1, 0.2).head(in.flowM3PerS()), within(1e-12));
            assertThat(point.holdup())
                    .isCloseTo(
                            GasHoldup.richardsonZaki(
                                    air / bore,
                                    -0.06 * in.flowM3PerS() / (columns * bore),
                                    in.terminalSpeedMPerS(),
                                    2.3),
                            within(1e-12));
            assertThat(point.shareAtLip())
                    .isCloseTo(
                            new FoamLife(in.meanLifeS(), in.lifeShape()).survivingShare(air, point.foamGasM3()),
                            within(1e-12));
            assertThat(point.lipGasFluxMPerS())
                    .isCloseTo(point.shareAtLip() * air / (Math.PI / 4 * 0.05 * 0.05), withinPercentage(1e-9));
        }
    }

    @Test
    void whatComesOverTheLipIsTheRisingFoamForEveryExponent() {
        for (double exponent : new double[] {1.5, 2, 2.6, 3}) {
            SkimmerUnit unit = with(traits(exponent, 2, 0), 2);
            SteadyInputs in = inputs(unit, 228);
            SteadyPoint point = new SteadyLaw(unit).at(in);
            RisenFoam.Equilibrium foam =
                    RisenFoam.equilibrium(point.lipGasFluxMPerS(), in.drainageSpeedMPerS(), exponent);
            assertThat(point.lipFlooded()).isFalse();
            assertThat(point.lipLiquidFraction()).isCloseTo(foam.liquidFraction(), within(1e-12));
            assertThat(point.lipLiquidFluxMPerS()).isCloseTo(foam.liquidFluxMPerS(), withinPercentage(1e-6));
            assertThat(point.skimmateM3PerS())
                    .isCloseTo(2 * Math.PI / 4 * 0.05 * 0.05 * foam.liquidFluxMPerS(), withinPercentage(1e-6));
        }
    }

    /** Stevenson's limit: just under it foam, just over it a wet froth, and no step in the amount between. */
    @Test
    void theLipFloodsWhereTheRisingFoamDoes() {
        for (double exponent : new double[] {1.6, 2, 2.7}) {
            SkimmerUnit unit = with(traits(exponent, 2, 0), 1);
            SteadyLaw law = new SteadyLaw(unit);
            SteadyInputs in = inputs(unit, 205);
            double gas = law.at(in).lipGasFluxMPerS();
            double limit = gas / RisenFoam.floodingGasFlux(1, exponent);
            SteadyPoint under = law.at(withDrainage(in, limit * 1.0001));
            SteadyPoint over = law.at(withDrainage(in, limit * 0.9999));
            assertThat(under.lipFlooded()).isFalse();
            assertThat(over.lipFlooded()).isTrue();
            assertThat(over.lipLiquidFraction()).isCloseTo((exponent - 1) / (exponent + 1), within(1e-12));
            assertThat(over.skimmateM3PerS()).isCloseTo(under.skimmateM3PerS(), withinPercentage(0.1));
        }
    }

    private static SteadyInputs withDrainage(SteadyInputs in, double speed) {
        return new SteadyInputs(
                in.crestM(),
                in.flowM3PerS(),
                in.levelBeyondM(),
                in.airM3PerS(),
                in.terminalSpeedMPerS(),
                in.meanLifeS(),
                in.lifeShape(),
                speed,
                in.backPressureHeadM(),
                in.weightOnWater());
    }

    @Test
    void withoutFlowTheLevelIsWhatStandsThere() {
        SteadyLaw law = new SteadyLaw(UNIT);
        Settings still = UNIT.ratedSettings(205).withFlowLitresPerHour(0);
        assertThat(law.at(SteadyInputs.of(UNIT, still)).clearLevelM()).isCloseTo(0.205, within(1e-12));
        Settings backed = still.withCondition(Condition.REFERENCE.withLevelBeyondWeirMm(230));
        SteadyPoint point = law.at(SteadyInputs.of(UNIT, backed));
        assertThat(point.clearLevelM()).isCloseTo(0.230, within(1e-12));
        assertThat(point.headM()).isCloseTo(0.025, within(1e-12));
    }

    @Test
    void aDrownedWeirsHeadIsDoubtedByATenthAtLeastAMillimetre() {
        Settings drowned = UNIT.ratedSettings(205).withCondition(Condition.REFERENCE.withLevelBeyondWeirMm(212));
        OperatingPoint point = OperatingPoint.of(UNIT, drowned);
        assertThat(point.headBandMm().width() / 2).isCloseTo(0.1 * point.headMm(), within(1e-9));
        assertThat(point.headBandMm().low()).isCloseTo(0.9 * point.headMm(), within(1e-9));
        OperatingPoint still = OperatingPoint.of(UNIT, drowned.withFlowLitresPerHour(0));
        assertThat(still.headMm()).isCloseTo(7, within(1e-9));
        assertThat(still.headBandMm().low()).isCloseTo(6, within(1e-9));
        assertThat(still.headBandMm().high()).isCloseTo(8, within(1e-9));
    }

    @Test
    void theOperatingPointsNumbersBelongTogether() {
        SkimmerUnit unit = with(traits(2, 2, 0), 2);
        Settings settings = unit.ratedSettings(205)
                .withCondition(Condition.REFERENCE
                        .withBackPressurePa(30)
                        .withAirLineOpening(0.9)
                        .withInjectorHealth(0.95));
        OperatingPoint point = OperatingPoint.of(unit, settings);
        SteadyPoint law = new SteadyLaw(unit).at(SteadyInputs.of(unit, settings));
        double lift = 1 / (1 - point.holdup());
        assertThat(point.columnLevelMm())
                .isCloseTo(
                        point.clearLevelMm()
                                + point.gasLiftMm()
                                - lift * (point.foamWeightMm() + point.backPressureMm()),
                        within(1e-9));
        assertThat(point.submergenceMm()).isCloseTo(point.columnLevelMm() - 215, within(1e-9));
        assertThat(point.submergenceBandMm().low() - point.submergenceMm())
                .isCloseTo(lift * (point.headBandMm().low() - point.headMm()), within(1e-9));
        assertThat(point.submergenceBandMm().high() - point.submergenceMm())
                .isCloseTo(lift * (point.headBandMm().high() - point.headMm()), within(1e-9));
        assertThat(point.foamVolumeMl()).isCloseTo(2 * law.foamGasM3() * 1e6, within(1e-9));
        assertThat(point.foamCreepMmPerMin()).isCloseTo(law.lipGasFluxMPerS() * 60_000, within(1e-9));
        assertThat(point.airLitresPerHour()).isCloseTo(150 * 0.9 * 0.95, within(1e-9));
        assertThat(point.foamWeightMm()).isPositive();
    }

    @Test
    void aSlippedWeirStandsLowerThanItsMark() {
        SteadyInputs slipped =
                SteadyInputs.of(UNIT, UNIT.ratedSettings(205).withCondition(Condition.REFERENCE.withWeirSlipMm(-4)));
        assertThat(slipped.crestM()).isCloseTo(0.201, within(1e-12));
        assertThat(SteadyInputs.trueCrestM(3, -50)).isEqualTo(0.001);
    }

    @Test
    void bubblesAndLivesAreTheUnitsOwnAtSeaAndLessInFreshWater() {
        Settings sea = UNIT.ratedSettings(205);
        assertThat(FreshBubble.diameterM(UNIT.traits(), sea)).isCloseTo(0.0008, within(1e-12));
        assertThat(MeanLife.seconds(UNIT.traits(), sea)).isCloseTo(24, within(1e-9));
        double life = 0;
        double diameter = 1;
        for (double salinity : new double[] {1, 4, 8, 15, 25, 35, 40}) {
            Settings at = sea.withPracticalSalinity(salinity);
            assertThat(MeanLife.seconds(UNIT.traits(), at)).isGreaterThan(life);
            assertThat(FreshBubble.diameterM(UNIT.traits(), at)).isLessThan(diameter);
            life = MeanLife.seconds(UNIT.traits(), at);
            diameter = FreshBubble.diameterM(UNIT.traits(), at);
        }
        assertThat(FreshBubble.diameterM(UNIT.traits(), sea.withPracticalSalinity(0)))
                .isBetween(0.00235, 0.0024);
        // Salt scales the foam, it does not annihilate it.
        assertThat(MeanLife.seconds(UNIT.traits(), sea.withPracticalSalinity(0)) / 24)
                .isBetween(0.2, 0.6);
    }

    @Test
    void withoutAirTheReferenceColumnIsTheWaterAlone() {
        Settings still = UNIT.ratedSettings(205).withAirLitresPerHour(0);
        ReferenceColumn column = ReferenceColumn.of(UNIT, still);
        OperatingPoint fast = OperatingPoint.of(UNIT, still);
        assertThat(column.columnLevelMm()).isCloseTo(fast.columnLevelMm(), within(1e-9));
        assertThat(column.submergenceMm()).isCloseTo(fast.submergenceMm(), within(1e-9));
        assertThat(column.foamTopMm()).isCloseTo(column.columnLevelMm(), within(1e-9));
        assertThat(column.lipBubbleMm()).isCloseTo(0.8, within(1e-9));
        assertThat(column.skimmateMlPerDay()).isZero();
        assertThat(column.flooded()).isFalse();
        Settings high = UNIT.ratedSettings(420);
        assertThat(ReferenceColumn.of(UNIT, high).flooded()).isTrue();
        assertThat(ReferenceColumn.of(UNIT, high).skimmateMlPerDay())
                .isCloseTo(OperatingPoint.of(UNIT, high).skimmateMlPerDay(), withinPercentage(1e-6));
    }
}
