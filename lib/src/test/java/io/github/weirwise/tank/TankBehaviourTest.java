package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a keeper would tell a newcomer about a tank, one sentence a test. */
class TankBehaviourTest {
    private final TankPlan plan = Tanks.plan();
    private final TankSimulator simulator = new TankSimulator(plan);
    private final TankState settled =
            simulator.advance(Tanks.mature(plan), 24 * 14, Routine.USUAL.events(plan, 0, 24 * 14));
    private final double now = settled.hours();

    private TankState after(double hours, TankEvent... events) {
        return simulator.advance(settled, now + hours, List.of(events));
    }

    private double skimmate(double hours, TankEvent... events) {
        return after(hours, events).of(Stock.SKIMMATE_ML_PER_DAY);
    }

    @Test
    void raisingTheWeirMakesMoreFoamButNotAtOnce() {
        TankEvent up = new TankEvent.WeirSet(now, settled.of(Stock.WEIR_CREST_MM) + 4);
        double still = skimmate(24);
        assertThat(skimmate(0.5, up)).isLessThan(1.5 * still);
        assertThat(skimmate(24, up)).isGreaterThan(1.5 * still);
    }

    @Test
    void aWeirSetFarTooHighFloodsTheCupWithinTheHour() {
        TankEvent flood = new TankEvent.WeirSet(now, 210);
        assertThat(skimmate(1, flood)).isGreaterThan(10 * plan.unit().target().skimmateMlPerDay());
    }

    @Test
    void theWeirStopsAtTheEndOfItsTravel() {
        TankState after = after(1, new TankEvent.WeirSet(now, 1500));
        assertThat(after.of(Stock.WEIR_CREST_MM)).isEqualTo(plan.unit().weir().highestCrestMm());
    }

    @Test
    void afterWashingTheNeckFoamIsAwayForHoursAndThenBetterThanBefore() {
        TankState dirty = after(24 * 10);
        TankEvent wash = new TankEvent.Serviced(dirty.hours(), TankPart.NECK);
        double before = dirty.of(Stock.SKIMMATE_ML_PER_DAY);
        TankState soon = simulator.advance(dirty, dirty.hours() + 2, List.of(wash));
        TankState later = simulator.advance(dirty, dirty.hours() + 48, List.of(wash));
        assertThat(soon.of(Stock.SKIMMATE_ML_PER_DAY)).isLessThan(0.5 * before);
        assertThat(later.of(Stock.SKIMMATE_ML_PER_DAY)).isGreaterThan(before);
    }

    @Test
    void handsInTheTankBreakTheFoamForADayAndItComesBackByItself() {
        TankEvent hands = new TankEvent.OilFilm(now, 0.5);
        assertThat(skimmate(6, hands)).isLessThan(0.3 * skimmate(6));
        assertThat(skimmate(60, hands)).isGreaterThan(0.8 * skimmate(60));
    }

    @Test
    void aConditionerMakesTheCupRunOverForDays() {
        TankEvent conditioner = new TankEvent.FoamingAgent(now, TankEvent.Agent.CONDITIONER, 0.3);
        assertThat(skimmate(12, conditioner)).isGreaterThan(2 * skimmate(12));
        assertThat(skimmate(24 * 8, conditioner)).isLessThan(1.2 * skimmate(24 * 8));
    }

    @Test
    void overfeedingBreaksFoamFirstAndFeedsItLater() {
        TankEvent feast = new TankEvent.Overfed(now, 12, 0.7);
        assertThat(skimmate(6, feast)).isLessThan(skimmate(6));
        assertThat(after(24 * 4, feast).of(Stock.SKIMMABLE_G))
                .isGreaterThan(after(24 * 4).of(Stock.SKIMMABLE_G));
        assertThat(skimmate(24 * 4, feast)).isGreaterThan(skimmate(24 * 4));
    }

    @Test
    void aDeadAnimalRaisesAmmoniaThenNitrate() {
        TankEvent death = new TankEvent.AnimalDied(now, 80);
        assertThat(after(48, death).of(Stock.AMMONIA_G))
                .isGreaterThan(1.2 * after(48).of(Stock.AMMONIA_G));
        assertThat(after(24 * 14, death).of(Stock.NITRATE_G))
                .isGreaterThan(after(24 * 14).of(Stock.NITRATE_G));
        TankEvent found = new TankEvent.SolidsRemoved(now + 12, 1);
        assertThat(after(24 * 14, death, found).of(Stock.NITRATE_G))
                .isLessThan(after(24 * 14, death).of(Stock.NITRATE_G));
    }

    @Test
    void freshWaterPouredInByMistakeDriesTheFoamThoughTheWeirIsRight() {
        TankEvent mistake = new TankEvent.WaterChanged(now, 90, 0);
        TankState wrong = after(24, mistake);
        assertThat(wrong.practicalSalinity()).isLessThan(26);
        assertThat(wrong.of(Stock.SKIMMATE_ML_PER_DAY)).isLessThan(0.8 * skimmate(24));
    }

    @Test
    void aSuddenDropOfSalinityHurtsTheBacteriaToo() {
        TankState wrong = after(24, new TankEvent.WaterChanged(now, 90, 0));
        assertThat(wrong.of(Stock.AMMONIA_COLONY)).isLessThan(0.4);
        assertThat(wrong.of(Stock.AMMONIA_G)).isGreaterThan(after(24).of(Stock.AMMONIA_G));
    }

    @Test
    void theDisplayDrainsIntoTheSumpWhenThePumpStopsAndSurgesWhenItRestarts() {
        double running = TankConditions.of(plan, settled).sumpLitres();
        TankState stopped = after(1, new TankEvent.ReturnPump(now, false));
        assertThat(TankConditions.of(plan, stopped).sumpLitres())
                .isCloseTo(running + plan.body().drainDownLitres(), within(1.0));
        TankState restarted = after(1.1, new TankEvent.ReturnPump(now, false), new TankEvent.ReturnPump(now + 1, true));
        double ml = restarted.of(Stock.SKIMMATE_ML) - stopped.of(Stock.SKIMMATE_ML);
        assertThat(ml).isGreaterThan(plan.parameters().value(TankParameter.RESTART_SURGE_ML));
    }

    /** A weir is set while the pumps run: nothing restarts, so nothing surges. */
    @Test
    void aMoveOfTheWeirPutsNoWaterIntoTheCup() {
        TankEvent move = new TankEvent.WeirSet(now, settled.of(Stock.WEIR_CREST_MM) + 1);
        TankState moved = new TankSimulator(plan).done(settled, List.of(move));
        assertThat(moved.of(Stock.SKIMMATE_ML)).isEqualTo(settled.of(Stock.SKIMMATE_ML));
        assertThat(moved.of(Stock.CUP_ML)).isEqualTo(settled.of(Stock.CUP_ML));
        assertThat(moved.of(Stock.FILM_LOST)).isGreaterThan(settled.of(Stock.FILM_LOST));
    }

    @Test
    void aSumpWithoutRoomForTheDrainDownFloodsTheFloorInAPowerCut() {
        TankBody roomy = plan.body();
        TankBody tight = new TankBody(
                roomy.heldLitres(),
                roomy.sumpLitres(),
                roomy.sumpLitres() + 0.5 * roomy.drainDownLitres(),
                roomy.pumpNeedsLitres(),
                roomy.drainDownLitres(),
                roomy.surfaceM2(),
                roomy.reservoirLitres());
        TankEvent cut = new TankEvent.PowerCut(now, 3);
        assertThat(after(4, cut).of(Stock.SPILLED_LITRES)).isZero();
        TankState flooded = new TankSimulator(plan.withBody(tight)).advance(settled, now + 4, List.of(cut));
        assertThat(flooded.of(Stock.SPILLED_LITRES)).isCloseTo(0.5 * roomy.drainDownLitres(), within(1.0));
    }

    @Test
    void oxygenFallsThroughAPowerCutAndRecoversAfterIt() {
        TankEvent cut = new TankEvent.PowerCut(now, 8);
        double before = settled.of(Stock.OXYGEN_MG_PER_LITRE);
        double lowest = after(7.9, cut).of(Stock.OXYGEN_MG_PER_LITRE);
        assertThat(lowest).isLessThan(before - 0.3);
        assertThat(after(24, cut).of(Stock.OXYGEN_MG_PER_LITRE)).isCloseTo(before, within(0.05));
    }

    @Test
    void aStoppedSkimmerAeratesLess() {
        TankState stopped = after(24, new TankEvent.InjectorPump(now, false));
        assertThat(stopped.of(Stock.OXYGEN_MG_PER_LITRE)).isLessThan(after(24).of(Stock.OXYGEN_MG_PER_LITRE));
        assertThat(stopped.of(Stock.SKIMMATE_ML_PER_DAY)).isLessThan(1);
    }

    @Test
    void anAirLineUnderWaterStopsTheFoamUntilItIsLiftedOut() {
        assertThat(skimmate(24, new TankEvent.AirLine(now, true))).isLessThan(1);
        assertThat(skimmate(48, new TankEvent.AirLine(now, true), new TankEvent.AirLine(now + 12, false)))
                .isGreaterThan(0.8 * skimmate(48));
    }

    @Test
    void saltCreepDriesTheFoamAndRinsingTheAirLineBringsItBack() {
        TankEvent creep = new TankEvent.Fouled(now, TankPart.AIR_LINE, 0.1);
        TankEvent rinse = new TankEvent.Serviced(now + 24, TankPart.AIR_LINE);
        assertThat(skimmate(24, creep)).isLessThan(0.7 * skimmate(24));
        assertThat(skimmate(72, creep, rinse)).isGreaterThan(skimmate(72, creep));
        assertThat(skimmate(72, creep, rinse)).isGreaterThan(0.9 * skimmate(72));
    }

    @Test
    void aCloggedStrainerLowersTheFlowAndWithItTheLevel() {
        TankState clogged = after(24, new TankEvent.Fouled(now, TankPart.STRAINER, 0.3));
        assertThat(TankConditions.of(plan, clogged).flowLitresPerHour()).isLessThan(1000);
        assertThat(simulator.operatingPoint(clogged).submergenceMm())
                .isLessThan(simulator.operatingPoint(after(24)).submergenceMm() - 2);
    }

    @Test
    void aPadLeftForWeeksBacksTheWaterUpAndDrownsTheWeir() {
        List<TankEvent> noPad = Routine.USUAL.events(plan, now, now + 24 * 70).stream()
                .filter(event -> !event.equals(new TankEvent.Serviced(event.atHours(), TankPart.PAD)))
                .toList();
        TankState left = simulator.advance(settled, now + 24 * 70, noPad);
        TankState kept = simulator.advance(settled, now + 24 * 70, Routine.USUAL.events(plan, now, now + 24 * 70));
        double crest = settled.of(Stock.WEIR_CREST_MM);
        assertThat(TankConditions.of(plan, kept).levelBeyondWeirMm()).isLessThan(crest);
        assertThat(TankConditions.of(plan, left).levelBeyondWeirMm()).isGreaterThan(crest);
        assertThat(left.of(Stock.SKIMMATE_ML)).isGreaterThan(kept.of(Stock.SKIMMATE_ML));
    }

    @Test
    void aSlippedWeirShowsInTheFoamButNotOnItsMark() {
        TankEvent slip = new TankEvent.WeirSlipped(now, -4);
        TankState slipped = after(24, slip);
        assertThat(slipped.of(Stock.WEIR_CREST_MM)).isEqualTo(settled.of(Stock.WEIR_CREST_MM));
        assertThat(slipped.of(Stock.SKIMMATE_ML_PER_DAY)).isLessThan(0.7 * skimmate(24));
    }

    @Test
    void aBlockedVentPressesTheLevelDown() {
        assertThat(skimmate(24, new TankEvent.CupPressure(now, 60))).isLessThan(0.5 * skimmate(24));
    }

    @Test
    void aFullContainerShutsTheAirIfItHasAFloatAndWetsTheFloorIfNot() {
        TankEvent full = new TankEvent.Fouled(now, TankPart.CONTAINER, 0.999);
        TankState shut = after(72, full);
        assertThat(shut.is(Stock.CONTAINER_FULL)).isTrue();
        assertThat(shut.of(Stock.SKIMMATE_ML_PER_DAY)).isLessThan(1);
        TankPlan without = plan.withWaste(new WasteRoute(true, plan.waste().containerLitres(), false));
        TankState wet = new TankSimulator(without).advance(settled, now + 72, List.of(full));
        assertThat(wet.of(Stock.SPILLED_LITRES)).isGreaterThan(0.05);
    }

    @Test
    void runawaySkimmateWithAutomaticTopOffDilutesTheTank() {
        TankPlan open = plan.withWaste(new WasteRoute(true, 5, false));
        TankSimulator runaway = new TankSimulator(open, Tanks.steady(9000, 10));
        TankState after = runaway.advance(settled, now + 24 * 2, List.of(new TankEvent.ReservoirFilled(now, 0)));
        assertThat(after.practicalSalinity()).isLessThan(settled.practicalSalinity() - 0.8);
        assertThat(after.of(Stock.SPILLED_LITRES)).isGreaterThan(5);
    }

    @Test
    void aTopOffStuckOpenRunsTheSumpOver() {
        TankPlan big = plan.withBody(new TankBody(257, 43, 55, 12, 12, 0.75, 200));
        TankState state = TankStart.mature(big, Tanks.onTarget(big.unit()));
        TankRun run = new TankSimulator(big)
                .run(state, 24, List.of(new TankEvent.TopOffSet(1, TankEvent.TopOff.STUCK_OPEN)), 1);
        assertThat(run.end().is(Stock.RESERVOIR_EMPTY)).isTrue();
        assertThat(run.end().of(Stock.SPILLED_LITRES)).isGreaterThan(100);
    }

    @Test
    void withoutTopOffTheSumpRunsDryAndTheFlowFalls() {
        TankRun run =
                simulator.run(settled, now + 24 * 21, List.of(new TankEvent.TopOffSet(now, TankEvent.TopOff.OFF)), 24);
        TankConditions dry = TankConditions.of(plan, run.end());
        assertThat(dry.sumpLitres()).isLessThan(plan.body().pumpNeedsLitres());
        assertThat(run.end().practicalSalinity()).isGreaterThan(37);
        assertThat(dry.flowLitresPerHour()).isLessThan(600);
    }

    @Test
    void aNewTankShowsAmmoniaThenNitriteThenNitrate() {
        Settings settings = Tanks.onTarget(plan.unit());
        TankRun run = simulator.run(TankStart.fresh(plan, settings), 24 * 60, List.of(), 24);
        double ammonia = peakDay(run.samples().stream().map(s -> s.of(Stock.AMMONIA_G)));
        double nitrite = peakDay(run.samples().stream().map(s -> s.of(Stock.NITRITE_G)));
        assertThat(ammonia).isBetween(5.0, 30.0);
        assertThat(nitrite).isGreaterThan(ammonia);
        assertThat(run.end().of(Stock.NITRITE_G)).isLessThan(0.1 * run.end().of(Stock.NITRATE_G));
    }

    private static double peakDay(Stream<Double> days) {
        List<Double> all = days.toList();
        double most = all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return all.indexOf(most) + 1.0;
    }

    @Test
    void aNewUnitFoamsTooWetInItsFirstDays() {
        Settings settings = Tanks.onTarget(plan.unit());
        TankState fresh = TankStart.fresh(plan, settings);
        TankPlan seasoned = plan.withParameters(TankParameters.DEFAULT.with(TankParameter.BREAK_IN_BOOST, 0));
        TankState withResidues = simulator.advance(fresh, 48, List.of());
        TankState without = new TankSimulator(seasoned).advance(fresh, 48, List.of());
        assertThat(withResidues.of(Stock.SKIMMATE_ML_PER_DAY))
                .isGreaterThan(1.2 * without.of(Stock.SKIMMATE_ML_PER_DAY));
    }

    @Test
    void moreMediaUnderWaterLeaveMoreAmmonia() {
        TankPlan deep = plan.withBiofilter(plan.biofilter().withDrownedShare(0.9));
        TankState deepAfter = new TankSimulator(deep).advance(settled, now + 24 * 7, List.of());
        assertThat(deepAfter.of(Stock.AMMONIA_G)).isGreaterThan(after(24 * 7).of(Stock.AMMONIA_G));
    }

    @Test
    void weekendFeedingShowsInTheFoam() {
        TankPlan weekend = plan.withFeeding(new Feeding(plan.feeding().gramsPerDay(), 2.5));
        TankRun run = new TankSimulator(weekend).run(settled, now + 24 * 14, List.of(), 24);
        double friday = run.samples().get(11).of(Stock.SKIMMABLE_G);
        double monday = run.samples().get(13).of(Stock.SKIMMABLE_G);
        assertThat(monday).isGreaterThan(1.1 * friday);
    }

    @Test
    void anOutlookNamesTheDayWhenSomethingWillBeDue() {
        Routine washingLeftOut = new Routine(0, 7, 0, 7, 14, 28, 0, 7, 0.1, 35);
        List<TankEvent> work = washingLeftOut.events(plan, now, now + 24 * 40);
        TankOutlook ahead = TankOutlook.of(simulator, settled, 40, work);
        assertThat(ahead.daysUntilNeckWash().orElseThrow()).isBetween(5.0, 20.0);
        double litresPerDay = ahead.summary().evaporatedLitresPerDay();
        assertThat(ahead.daysUntilReservoirEmpty().orElseThrow())
                .isCloseTo(settled.of(Stock.RESERVOIR_LITRES) / litresPerDay, withinPercentage(10));
        assertThat(ahead.organicsLessG()).isPositive();
        assertThat(ahead.nitrateAvoidedG()).isPositive();
        assertThat(ahead.summary().salinityDriftPerWeek()).isNegative();
    }

    @Test
    void aTankKeptTheUsualWayStaysNearItsTargetForTwoMonths() {
        for (var unit : FirstRoundUnits.units()) {
            TankPlan kept = TankPlan.around(unit, unit.ratedFlowLitresPerHour() / 4);
            TankState end = new TankSimulator(kept)
                    .advance(Tanks.mature(kept), 24 * 60, Routine.USUAL.events(kept, 0, 24 * 60));
            TankConditions water = TankConditions.of(kept, end);
            assertThat(water.practicalSalinity()).isBetween(34.5, 35.2);
            assertThat(water.unionisedMgPerLitre()).isLessThan(ToxicityLimit.UNIONISED_GUIDELINE.mgNitrogenPerLitre());
            assertThat(water.nitriteMgPerLitre()).isLessThan(ToxicityLimit.NITRITE_GUIDELINE.mgNitrogenPerLitre());
            assertThat(water.skimmableMgPerLitre()).isBetween(1.5, 3.0);
            assertThat(water.oxygenMgPerLitre()).isGreaterThan(6);
        }
    }

    @Test
    void switchingAProcessOffTouchesNothingElseThatDoesNotHangOnIt() {
        TankPlan noCreep = plan.withParameters(TankParameters.DEFAULT.without(TankProcess.AIR_LINE_CREEP));
        TankState without = new TankSimulator(noCreep).advance(settled, now + 24 * 7, List.of());
        TankState with = after(24 * 7);
        assertThat(without.of(Stock.AIR_LINE_CREEP)).isEqualTo(settled.of(Stock.AIR_LINE_CREEP));
        assertThat(without.of(Stock.NOZZLE_SCALE)).isCloseTo(with.of(Stock.NOZZLE_SCALE), within(1e-9));
        assertThat(without.of(Stock.SKIMMATE_ML)).isGreaterThan(with.of(Stock.SKIMMATE_ML));
    }

    @Test
    void everyServiceLeavesItsPartClean() {
        List<TankEvent> events = new ArrayList<>();
        for (TankPart part : TankPart.values()) {
            events.add(new TankEvent.Fouled(now, part, 0.5));
            events.add(new TankEvent.Serviced(now + 0.001, part));
        }
        TankState clean = simulator.advance(settled, now + 0.002, events);
        assertThat(List.of(
                        clean.of(Stock.NECK_FILM),
                        clean.of(Stock.AIR_LINE_CREEP),
                        clean.of(Stock.NOZZLE_SCALE),
                        clean.of(Stock.PUMP_WEAR),
                        clean.of(Stock.PAD_CLOG),
                        clean.of(Stock.STRAINER_CLOG)))
                .allSatisfy(share -> assertThat(share).isLessThan(1e-3));
        assertThat(clean.of(Stock.CUP_ML) + clean.of(Stock.CONTAINER_ML)).isLessThan(1);
        assertThat(clean.of(Stock.RESERVOIR_LITRES)).isCloseTo(plan.body().reservoirLitres(), within(0.1));
    }
}
