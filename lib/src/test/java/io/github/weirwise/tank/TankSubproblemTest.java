package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankProcess.*;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: parts of the tank that have a solution on paper, everything else switched off. */
class TankSubproblemTest {
    private final TankPlan plan = Tanks.plan();

    private TankPlan only(TankProcess... processes) {
        return plan.withParameters(TankParameters.DEFAULT.only(processes));
    }

    @Test
    void nothingChangesInATankWithEverythingSwitchedOff() {
        TankPlan still = only();
        TankState before = Tanks.mature(still);
        TankState after = Tanks.after(30, still, before);
        assertThat(after.atHours(0)).isEqualTo(before);
    }

    @Test
    void organicsDecayExponentiallyAndTheirRemainderFollowsTheChain() {
        TankPlan decay = only(DECAY);
        TankState start = Tanks.mature(decay);
        TankState before = new TankState(
                0,
                start.water(),
                new TankState.Organics(10, 0, 0, 0, 0),
                start.nitrogen(),
                start.media(),
                start.parts(),
                start.foam(),
                start.vessels(),
                start.controls(),
                start.ledger());
        double fast = decay.parameters().value(TankParameter.SKIMMABLE_DECAY_PER_DAY);
        double slow = decay.parameters().value(TankParameter.REFRACTORY_DECAY_PER_DAY);
        double passed = decay.parameters().value(TankParameter.SKIMMABLE_TO_REFRACTORY_SHARE);
        for (double days : new double[] {0.5, 3, 20}) {
            TankState after = Tanks.after(days, decay, before);
            // Bateman: x1 = 10 exp(-k1 t); x2 = 10 s k1/(k2 - k1) (exp(-k1 t) - exp(-k2 t))
            double first = 10 * Math.exp(-fast * days);
            double second = 10 * passed * fast / (slow - fast) * (Math.exp(-fast * days) - Math.exp(-slow * days));
            assertThat(after.organics().skimmableG()).isCloseTo(first, withinPercentage(0.01));
            assertThat(after.organics().refractoryG()).isCloseTo(second, withinPercentage(0.01));
        }
    }

    @Test
    void aSteadyFoamRemovesOrganicsAtFirstOrderWhenItIsAsStrongAsTheWater() {
        TankPlan skim = only(SKIMMING, TOP_OFF);
        double mlPerDay = 3000;
        TankState start = Tanks.mature(skim);
        TankState before = new TankState(
                0,
                start.water(),
                start.organics(),
                start.nitrogen(),
                start.media(),
                start.parts(),
                new TankState.Foam(mlPerDay, 0, 0, 0),
                new TankState.Vessels(0, 0, 0, 1e6),
                start.controls(),
                start.ledger());
        TankState after = new TankSimulator(skim.withWaste(WasteRoute.container(1000)), Tanks.steady(mlPerDay, 0))
                .advance(before, 24 * 60, List.of());
        double left = after.organics().skimmableG() / before.organics().skimmableG();
        double litres = TankConditions.of(skim, before).litres();
        assertThat(left).isCloseTo(Math.exp(-mlPerDay / 1000 * 60 / litres), withinPercentage(0.1));
    }

    @Test
    void saltFallsExponentiallyWhenFoamIsReplacedByFreshWater() {
        // Conservation of salt, S = S0 exp(-q t/m): 120 mL a day from 300 L over a quarter of a year.
        TankPlan skim = only(SKIMMING, TOP_OFF).withWaste(WasteRoute.container(1000));
        TankState start = Tanks.mature(skim);
        TankState before = new TankState(
                0,
                start.water(),
                start.organics(),
                start.nitrogen(),
                start.media(),
                start.parts(),
                new TankState.Foam(120, 0, 0, 0),
                new TankState.Vessels(0, 0, 0, 1e5),
                start.controls(),
                start.ledger());
        TankState after = new TankSimulator(skim, Tanks.steady(120, 200)).advance(before, 24 * 90, List.of());
        double left = after.water().saltKg() / before.water().saltKg();
        assertThat(left).isCloseTo(Math.exp(-0.12 * 90 / 300), withinPercentage(0.01));
        // The paper solution keeps the mass; the tank keeps its volume, and fresher water is 0.1 % lighter.
        double expected = SaltBalance.afterSkimming(before.water().practicalSalinity(), 300, 0.12, 90);
        assertThat(after.water().practicalSalinity()).isCloseTo(expected, withinPercentage(0.1));
    }

    @Test
    void evaporationConcentratesTheSaltThatStays() {
        TankPlan evaporate = only(EVAPORATION);
        TankState before = Tanks.mature(evaporate);
        TankState after = Tanks.after(5, evaporate, before);
        double mass = before.water().waterKg() + before.water().saltKg();
        double expected = SaltBalance.afterEvaporation(
                before.water().practicalSalinity(), mass, after.ledger().waterEvaporatedKg());
        assertThat(after.water().saltKg()).isEqualTo(before.water().saltKg());
        assertThat(after.water().practicalSalinity()).isCloseTo(expected, within(1e-9));
        double perDay = Evaporation.ashraeKgPerM2Day(25, 35, 22, 0.5, 0, 0.74)
                * evaporate.body().surfaceM2();
        assertThat(after.ledger().waterEvaporatedKg()).isCloseTo(5 * perDay, withinPercentage(0.1));
    }

    @Test
    void foamFollowsAChangeWithItsLag() {
        TankPlan skim = only(SKIMMING, FOAM_LAG);
        double lag = skim.parameters().value(TankParameter.SETTLING_HOURS);
        TankState before = Tanks.mature(skim);
        for (double hours : new double[] {0.5, 3, 12}) {
            TankState after = new TankSimulator(skim, Tanks.steady(100, 200)).advance(before, hours, List.of());
            assertThat(after.foam().skimmateMlPerDay())
                    .isCloseTo(100 * (1 - Math.exp(-hours / lag)), withinPercentage(0.1));
        }
    }

    @Test
    void eachGramOfAmmoniaOxidisedCostsAlkalinityAndBecomesNitrate() {
        TankPlan nitrify = only(NITRIFICATION);
        TankState before = Tanks.mature(nitrify);
        TankState after = Tanks.after(10, nitrify, before);
        double gone = before.nitrogen().ammoniaG() - after.nitrogen().ammoniaG();
        assertThat(gone).isPositive();
        assertThat(after.nitrogen().totalG()).isCloseTo(before.nitrogen().totalG(), within(1e-12));
        double alkalinityUsed = (before.water().alkalinityEq() - after.water().alkalinityEq()) * 50.04345;
        assertThat(alkalinityUsed).isCloseTo(RivalLaws.ALKALINITY_PER_NITROGEN * gone, withinPercentage(0.01));
    }

    @Test
    void aSaturatedBiofilmTurnsOverItsPublishedRate() {
        // Nijhof & Bovendeur 1990: 0.28 g N/(m2 day) in sea water at 24 C, far above half saturation.
        TankPlan nitrify = only(NITRIFICATION).withBiofilter(plan.biofilter().withDrownedShare(0));
        TankState start = Tanks.mature(nitrify);
        TankState before = new TankState(
                0,
                new TankState.Water(start.water().waterKg(), start.water().saltKg(), 1000, 1000),
                start.organics(),
                new TankState.Nitrogen(20, 0, 0),
                start.media(),
                start.parts(),
                start.foam(),
                start.vessels(),
                start.controls(),
                start.ledger());
        TankState after = new TankSimulator(nitrify).advance(before, 24, List.of(new TankEvent.TemperatureSet(0, 24)));
        double perSquareMetre =
                (20 - after.nitrogen().ammoniaG()) / nitrify.biofilter().mediaM2();
        assertThat(perSquareMetre).isCloseTo(0.28, withinPercentage(0.2));
    }

    @Test
    void aDaysFeedBecomesItsPublishedShareOfAmmonia() {
        // Timmons & Ebeling: 0.092 g of ammonia nitrogen a gram of protein.
        TankPlan digest = only(DIGESTION);
        TankState before = Tanks.mature(digest);
        TankState after = new TankSimulator(digest).advance(before, 24 * 20, List.of(new TankEvent.Fed(0, 10)));
        assertThat(after.nitrogen().ammoniaG() - before.nitrogen().ammoniaG()).isCloseTo(0.414, within(1e-4));
    }
}
