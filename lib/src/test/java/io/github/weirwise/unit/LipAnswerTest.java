package io.github.weirwise.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.internal.physics.foam.RisenFoam;
import org.junit.jupiter.api.Test;

/** The stated answer of the amount to level, air and life, and that what ships is gentle. */
class LipAnswerTest {
    private static Settings wanted(SkimmerUnit unit) {
        double crest = WeirSetting.crestForSubmergence(
                        unit,
                        unit.ratedSettings(unit.weir().lowestCrestMm()),
                        unit.target().submergenceMm())
                .orElseThrow(() -> new AssertionError(unit.name() + " cannot stand at its wanted level"));
        return unit.ratedSettings(crest);
    }

    private static double amount(SkimmerUnit unit, Settings settings) {
        return OperatingPoint.of(unit, settings).skimmateMlPerDay();
    }

    @Test
    void everyUnitOfTheQuayGivesWhatIsWantedAtItsWantedLevel() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            Settings settings = wanted(unit);
            OperatingPoint point = OperatingPoint.of(unit, settings);
            assertThat(point.skimmateMlPerDay()).isCloseTo(unit.target().skimmateMlPerDay(), withinPercentage(2));
            assertThat(point.foamState()).isEqualTo(FoamState.ON_TARGET);
            assertThat(unit.target().darknessPtCo().contains(point.darknessPtCo()))
                    .as("%s: %s Pt-Co", unit.name(), point.darknessPtCo())
                    .isTrue();
        }
    }

    /** Bounds of the plan for what a picture and a practice tank show by default (judgement, not measured). */
    @Test
    void theUnitsOfTheQuayAnswerGently() {
        for (SkimmerUnit unit : LanternQuay.units()) {
            Settings settings = wanted(unit);
            double amount = amount(unit, settings);
            double air = settings.airLitresPerHour();
            assertThat(amount(unit, settings.withAirLitresPerHour(0.8 * air)) / amount)
                    .as("%s, a fifth less air", unit.name())
                    .isBetween(0.4, 0.7);
            assertThat(amount(unit, settings.withAirLitresPerHour(1.2 * air)) / amount)
                    .as("%s, a fifth more air", unit.name())
                    .isBetween(1.5, 2.5);
            double crest = settings.weirCrestMm();
            assertThat(amount(unit, settings.withWeirCrestMm(crest + 1)) / amount)
                    .as("%s, a millimetre of weir", unit.name())
                    .isBetween(1.05, 1.35);
            double fresh = amount(unit, settings.withPracticalSalinity(0)) / amount;
            assertThat(fresh).as("%s, fresh water", unit.name()).isBetween(1e-3, 0.3);
        }
    }

    @Test
    void theStatedExponentsAreThoseOfTheAmount() {
        for (double perMm : new double[] {1.05, 1.15, 1.35}) {
            for (double airExponent : new double[] {1, 2, 5}) {
                LipAnswer answer = new LipAnswer(1, perMm, airExponent, 3);
                SkimmerUnit unit = LanternQuay.jetty();
                SkimmerUnit stated = unit.withTraits(unit.traits().withLipAnswer(answer));
                SteadyLaw law = new SteadyLaw(stated);
                SteadyInputs in = SteadyInputs.of(stated, wanted(stated));
                SteadyPoint here = law.at(in);
                // A step of the crest lifts the level by the step over the share of water in the column.
                double step = 0.001 * (1 - here.holdup());
                assertThat(law.at(in.withCrestM(in.crestM() + step)).skimmateM3PerS() / here.skimmateM3PerS())
                        .isCloseTo(perMm, withinPercentage(2));
                SteadyPoint longer = law.at(in.withMeanLifeS(1.05 * in.meanLifeS()));
                assertThat(Math.log(longer.skimmateM3PerS() / here.skimmateM3PerS()) / Math.log(1.05))
                        .isCloseTo(3, within(0.2));
                double more = 1.05;
                SteadyInputs airier = in.withAirM3PerS(more * in.airM3PerS());
                double lifted = law.at(airier).columnLevelM() - here.columnLevelM();
                SteadyInputs level = airier.withCrestM(airier.crestM() - lifted * (1 - here.holdup()));
                assertThat(Math.log(law.at(level).skimmateM3PerS() / here.skimmateM3PerS()) / Math.log(more))
                        .isCloseTo(airExponent, within(0.15 * airExponent + 0.1));
            }
        }
    }

    @Test
    void theGasForALiquidFluxIsTheInverseOfTheRisingFoam() {
        for (double n : new double[] {1.5, 2, 2.6, 3}) {
            double drainage = 0.04;
            double flood = RisenFoam.floodingGasFlux(drainage, n);
            for (double share : new double[] {1e-4, 0.01, 0.2, 0.7, 0.99}) {
                RisenFoam.Equilibrium foam = RisenFoam.equilibrium(share * flood, drainage, n);
                assertThat(GasAtLip.Stated.gasFlux(foam.liquidFluxMPerS(), drainage, n))
                        .isCloseTo(share * flood, withinPercentage(0.1));
            }
            double past = RisenFoam.equilibrium(2 * flood, drainage, n).liquidFluxMPerS();
            assertThat(GasAtLip.Stated.gasFlux(past, drainage, n)).isCloseTo(2 * flood, withinPercentage(0.1));
        }
    }

    /** At a fixed share over the lip the amount goes with the square of the air. */
    @Test
    void theUsualAnswerToAirIsThatOfAnOverflowingFroth() {
        // Neethling, Lee & Cilliers 2003, Minerals Engineering 16:1123-1130, recalled: Q = (A vg^2 lambda/k1) a (1 -
        // a).
        assertThat(LipAnswer.USUAL.airExponent()).isEqualTo(2);
    }

    @Test
    void aFoamThatGivesMoreGivesMoreEverywhere() {
        SkimmerUnit unit = LanternQuay.kelpHall();
        LipAnswer usual = unit.traits().lipAnswer().orElseThrow();
        SkimmerUnit foamy = unit.withTraits(unit.traits().withLipAnswer(usual.timesFoaminess(1.6)));
        Settings settings = wanted(unit);
        assertThat(amount(foamy, settings) / amount(unit, settings)).isCloseTo(1.6, withinPercentage(3));
        SkimmerUnit longer = unit.withTraits(unit.traits().livingLonger(1.1));
        assertThat(amount(longer, settings) / amount(unit, settings)).isCloseTo(Math.pow(1.1, 4), withinPercentage(3));
    }
}
