package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.internal.physics.foam.CapillaryProfile;
import io.github.weirwise.internal.physics.foam.Venting;
import org.junit.jupiter.api.Test;

/** The full foam column behind a unit's settings: balance of pressure, limits and relations to the fast form. */
class ReferenceColumnTest {
    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings settings = unit.ratedSettings(205);

    @Test
    void theWholeWeightOfTheFoamLowersTheLevelLikeThatMuchWaterOverAManometer() {
        SkimmerUnit borne = unit.withTraits(unit.traits().withWeightOnWater(1));
        ReferenceColumn byWalls = ReferenceColumn.of(unit, settings);
        ReferenceColumn byWater = ReferenceColumn.of(borne, settings);
        double lift = 1 / (1 - OperatingPoint.of(unit, settings).holdup());
        double fall = byWalls.columnLevelMm() - byWater.columnLevelMm();
        assertThat(byWalls.foamWeightMm()).isZero();
        assertThat(fall).isCloseTo(lift * byWater.foamWeightMm(), within(1e-3));
        // The layer's weight, counted from the layers themselves.
        assertThat(byWater.foamWeightMm()).isCloseTo(weighed(byWater), withinPercentage(1));
    }

    /** A layer of known thickness and wetness: the static profile over water weighs what its integral says. */
    @Test
    void aKnownLayerOfStandingFoamShiftsAManometerByItsHeldLiquid() {
        CapillaryProfile layer = new CapillaryProfile(0.05, 1023, 1e-3, 0.36);
        double summed = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            summed += layer.liquidFraction((i + 0.5) * 0.1 / steps) * 0.1 / steps;
        }
        assertThat(layer.heldLiquid(0.1)).isCloseTo(summed, withinPercentage(0.01));
    }

    private static double weighed(ReferenceColumn column) {
        double weight = 0;
        for (int i = 1; i < column.layers().size(); i++) {
            FoamLayer below = column.layers().get(i - 1);
            FoamLayer above = column.layers().get(i);
            double mean = 0.5 * (below.liquidFraction() + above.liquidFraction());
            weight += mean * (above.heightMm() - below.heightMm());
        }
        return weight;
    }

    @Test
    void aUnitWithItsLifeFittedUnderTheColumnGivesItsTarget() {
        for (SkimmerUnit each : FirstRoundUnits.units()) {
            Settings wanted = each.ratedSettings(WeirSetting.crestForSubmergence(
                            each, each.ratedSettings(200), each.target().submergenceMm())
                    .orElseThrow());
            SkimmerUnit fitted = ReferenceColumn.withFittedLife(each, wanted, ColumnAssumptions.DEFAULT);
            ReferenceColumn column = ReferenceColumn.of(fitted, wanted);
            assertThat(column.skimmateMlPerDay()).isCloseTo(each.target().skimmateMlPerDay(), withinPercentage(0.1));
            assertThat(fitted.traits().meanLifeSeconds() / each.traits().meanLifeSeconds())
                    .isBetween(0.85, 1.0);
            assertThat(column.submergenceMm()).isCloseTo(each.target().submergenceMm(), within(0.01));
            assertThat(column.lipBubbleMm()).isCloseTo(2.2, within(0.25));
            assertThat(column.flooded()).isFalse();
        }
    }

    @Test
    void moreWeirIsWetterAndLessAirIsDrierAsInTheFastForm() {
        double amount = ReferenceColumn.of(unit, settings).skimmateMlPerDay();
        assertThat(ReferenceColumn.of(unit, settings.withWeirCrestMm(207)).skimmateMlPerDay())
                .isGreaterThan(amount);
        assertThat(ReferenceColumn.of(unit, settings.withAirLitresPerHour(130)).skimmateMlPerDay())
                .isLessThan(amount);
    }

    @Test
    void withoutAirThereIsNoFoamAndWithWaterAtTheLipThereIsAFlood() {
        ReferenceColumn still = ReferenceColumn.of(unit, settings.withAirLitresPerHour(0));
        assertThat(still.layers()).isEmpty();
        assertThat(still.skimmateMlPerDay()).isZero();
        ReferenceColumn drowned = ReferenceColumn.of(unit, settings.withWeirCrestMm(420));
        assertThat(drowned.flooded()).isTrue();
    }

    @Test
    void gasThatStaysInTheFoamIsRefusedAFitBecauseTheNeckWouldStream() {
        ColumnAssumptions merging = ColumnAssumptions.DEFAULT.withVenting(Venting.BY_MERGING);
        assertThat(ReferenceColumn.of(unit, settings, merging).skimmateMlPerDay())
                .isGreaterThan(1e5);
    }

    @Test
    void theSketchFollowsTheFullColumnOnceBothAreFittedAtTheWantedPoint() {
        ColumnAssumptions sketch = ColumnAssumptions.DEFAULT.withDetail(ColumnDetail.SKETCH);
        SkimmerUnit full = ReferenceColumn.withFittedLife(unit, settings, ColumnAssumptions.DEFAULT);
        SkimmerUnit drawn = ReferenceColumn.withFittedLife(unit, settings, sketch);
        for (int mm = -4; mm <= 4; mm += 2) {
            Settings moved = settings.withWeirCrestMm(settings.weirCrestMm() + mm);
            assertThat(ReferenceColumn.of(drawn, moved, sketch).skimmateMlPerDay())
                    .isCloseTo(ReferenceColumn.of(full, moved).skimmateMlPerDay(), withinPercentage(5));
        }
    }

    @Test
    void theSketchAlsoPutsTheFoamsWeightOnTheWater() {
        ColumnAssumptions sketch = ColumnAssumptions.DEFAULT.withDetail(ColumnDetail.SKETCH);
        SkimmerUnit borne = unit.withTraits(unit.traits().withWeightOnWater(1));
        ReferenceColumn byWater = ReferenceColumn.of(borne, settings, sketch);
        double lift = 1 / (1 - OperatingPoint.of(unit, settings).holdup());
        double fall = ReferenceColumn.of(unit, settings, sketch).columnLevelMm() - byWater.columnLevelMm();
        assertThat(fall).isCloseTo(lift * byWater.foamWeightMm(), within(1e-3));
        assertThat(byWater.foamWeightMm())
                .isCloseTo(ReferenceColumn.of(borne, settings).foamWeightMm(), withinPercentage(10));
        assertThat(byWater.layers()).isEmpty();
    }
}
