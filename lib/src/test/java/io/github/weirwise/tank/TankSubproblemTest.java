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
        TankState before = start.with(Stock.SKIMMABLE_G, 10)
                .with(Stock.REFRACTORY_G, 0)
                .with(Stock.SOLIDS_G, 0)
                .with(Stock.PAD_SOLIDS_G, 0)
                .with(Stock.DIGESTING_G, 0);
        double fast = decay.parameters().value(TankParameter.SKIMMABLE_DECAY_PER_DAY);
        double slow = decay.parameters().value(TankParameter.REFRACTORY_DECAY_PER_DAY);
        double passed = decay.parameters().value(TankParameter.SKIMMABLE_TO_REFRACTORY_SHARE);
        for (double days : new double[] {0.5, 3, 20}) {
            TankState after = Tanks.after(days, decay, before);
            // Bateman: x1 = 10 exp(-k1 t); x2 = 10 s k1/(k2 - k1) (exp(-k1 t) - exp(-k2 t))
            double first = 10 * Math.exp(-fast * days);
            double second = 10 * passed * fast / (slow - fast) * (Math.exp(-fast * days) - Math.exp(-slow * days));
            assertThat(after.of(Stock.SKIMMABLE_G)).isCloseTo(first, withinPercentage(0.01));
            assertThat(after.of(Stock.REFRACTORY_G)).isCloseTo(second, withinPercentage(0.01));
        }
    }

    @Test
    void aSteadyFoamRemovesOrganicsAtFirstOrderWhenItIsAsStrongAsTheWater() {
        TankPlan skim = only(SKIMMING, TOP_OFF);
        double mlPerDay = 3000;
        TankState start = Tanks.mature(skim);
        TankState before = start.with(Stock.SKIMMATE_ML_PER_DAY, mlPerDay).with(Stock.RESERVOIR_LITRES, 1e6);
        TankState after = new TankSimulator(skim.withWaste(WasteRoute.container(1000)), Tanks.steady(mlPerDay, 0))
                .advance(before, 24 * 60, List.of());
        double left = after.of(Stock.SKIMMABLE_G) / before.of(Stock.SKIMMABLE_G);
        double litres = TankConditions.of(skim, before).litres();
        assertThat(left).isCloseTo(Math.exp(-mlPerDay / 1000 * 60 / litres), withinPercentage(0.1));
    }

    @Test
    void saltFallsExponentiallyWhenFoamIsReplacedByFreshWater() {
        // Conservation of salt, S = S0 exp(-q t/m): 120 mL a day from 300 L over a quarter of a year.
        TankPlan skim = only(SKIMMING, TOP_OFF).withWaste(WasteRoute.container(1000));
        TankState start = Tanks.mature(skim);
        TankState before = start.with(Stock.SKIMMATE_ML_PER_DAY, 120).with(Stock.RESERVOIR_LITRES, 1e5);
        TankState after = new TankSimulator(skim, Tanks.steady(120, 200)).advance(before, 24 * 90, List.of());
        double left = after.of(Stock.SALT_KG) / before.of(Stock.SALT_KG);
        assertThat(left).isCloseTo(Math.exp(-0.12 * 90 / 300), withinPercentage(0.01));
        // The paper solution keeps the mass; the tank keeps its volume, and fresher water is 0.1 % lighter.
        double expected = SaltBalance.afterSkimming(before.practicalSalinity(), 300, 0.12, 90);
        assertThat(after.practicalSalinity()).isCloseTo(expected, withinPercentage(0.1));
    }

    @Test
    void evaporationConcentratesTheSaltThatStays() {
        TankPlan evaporate = only(EVAPORATION);
        TankState before = Tanks.mature(evaporate);
        TankState after = Tanks.after(5, evaporate, before);
        double mass = before.of(Stock.WATER_KG) + before.of(Stock.SALT_KG);
        double expected = SaltBalance.afterEvaporation(before.practicalSalinity(), mass, after.of(Stock.EVAPORATED_KG));
        assertThat(after.of(Stock.SALT_KG)).isEqualTo(before.of(Stock.SALT_KG));
        assertThat(after.practicalSalinity()).isCloseTo(expected, within(1e-9));
        double perDay = Evaporation.ashraeKgPerM2Day(25, 35, 22, 0.5, 0, 0.74)
                * evaporate.body().surfaceM2();
        assertThat(after.of(Stock.EVAPORATED_KG)).isCloseTo(5 * perDay, withinPercentage(0.1));
    }

    @Test
    void foamFollowsAChangeWithItsLag() {
        TankPlan skim = only(SKIMMING, FOAM_LAG);
        double lag = skim.parameters().value(TankParameter.SETTLING_HOURS);
        TankState before = Tanks.mature(skim);
        for (double hours : new double[] {0.5, 3, 12}) {
            TankState after = new TankSimulator(skim, Tanks.steady(100, 200)).advance(before, hours, List.of());
            assertThat(after.of(Stock.SKIMMATE_ML_PER_DAY))
                    .isCloseTo(100 * (1 - Math.exp(-hours / lag)), withinPercentage(0.1));
        }
    }

    @Test
    void eachGramOfAmmoniaOxidisedCostsAlkalinityAndBecomesNitrate() {
        TankPlan nitrify = only(NITRIFICATION);
        TankState before = Tanks.mature(nitrify);
        TankState after = Tanks.after(10, nitrify, before);
        double gone = before.of(Stock.AMMONIA_G) - after.of(Stock.AMMONIA_G);
        assertThat(gone).isPositive();
        assertThat(Tanks.nitrogenG(after)).isCloseTo(Tanks.nitrogenG(before), within(1e-12));
        double alkalinityUsed = (before.of(Stock.ALKALINITY_EQ) - after.of(Stock.ALKALINITY_EQ)) * 50.04345;
        assertThat(alkalinityUsed).isCloseTo(RivalLaws.ALKALINITY_PER_NITROGEN * gone, withinPercentage(0.01));
    }

    @Test
    void aSaturatedBiofilmTurnsOverItsPublishedRate() {
        // Nijhof & Bovendeur 1990: 0.28 g N/(m2 day) in sea water at 24 C, far above half saturation.
        TankPlan nitrify = only(NITRIFICATION).withBiofilter(plan.biofilter().withDrownedShare(0));
        TankState start = Tanks.mature(nitrify);
        TankState before = start.with(Stock.AMMONIA_G, 20)
                .with(Stock.NITRITE_G, 0)
                .with(Stock.NITRATE_G, 0)
                .with(Stock.ALKALINITY_EQ, 1000)
                .with(Stock.OXYGEN_MG_PER_LITRE, 1000);
        TankState after = new TankSimulator(nitrify).advance(before, 24, List.of(new TankEvent.TemperatureSet(0, 24)));
        double perSquareMetre =
                (20 - after.of(Stock.AMMONIA_G)) / nitrify.biofilter().mediaM2();
        assertThat(perSquareMetre).isCloseTo(0.28, withinPercentage(0.2));
    }

    @Test
    void aDaysFeedBecomesItsPublishedShareOfAmmonia() {
        // Timmons & Ebeling: 0.092 g of ammonia nitrogen a gram of protein.
        TankPlan digest = only(DIGESTION);
        TankState before = Tanks.mature(digest);
        TankState after = new TankSimulator(digest).advance(before, 24 * 20, List.of(new TankEvent.Fed(0, 10)));
        assertThat(after.of(Stock.AMMONIA_G) - before.of(Stock.AMMONIA_G)).isCloseTo(0.414, within(1e-4));
    }
}
