package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.weirwise.report.CountedWork;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.OperatingPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** The simulator as a tool: cut it, branch it, sample it as you like. */
class TankSimulatorTest {
    private final TankPlan plan = Tanks.plan();
    private final TankSimulator simulator = new TankSimulator(plan);
    private final TankState start = Tanks.mature(plan);

    @Test
    void theResultDoesNotDependOnHowOftenOneLooks() {
        List<TankEvent> events = Mishaps.year(3, plan);
        TankState unwatched = simulator.advance(start, 24 * 60, events);
        for (double every : new double[] {0.1, 1, 7.3, 24}) {
            assertThat(simulator.run(start, 24 * 60, events, every).end()).isEqualTo(unwatched);
        }
    }

    @Test
    void aRunCutIntoHoursEndsWhereTheWholeRunEnds() {
        List<TankEvent> events = Routine.USUAL.events(plan, 0, 24 * 30);
        TankState whole = simulator.advance(start, 24 * 30, events);
        TankState cut = start;
        for (int hour = 1; hour <= 24 * 30; hour++) {
            cut = simulator.advance(cut, hour, events);
        }
        double[] allowed = TankRates.tolerances(plan);
        double[] a = whole.all();
        double[] b = cut.all();
        for (int i = 0; i < Stock.FLOWING; i++) {
            double slack = i < Stock.FIRST_OF_LEDGER ? allowed[i] : 1e-4;
            assertThat(b[i]).as("component %d", i).isCloseTo(a[i], within(1e-3 * Math.abs(a[i]) + slack));
        }
    }

    @Test
    void theSameRunTwiceIsTheSameToTheLastBit() {
        TankPlan noisy = plan.withParameters(TankParameters.DEFAULT.with(TankParameter.NOISE_SIGMA, 0.3));
        TankSimulator one = new TankSimulator(noisy);
        List<TankEvent> events = Mishaps.year(11, noisy);
        assertThat(one.run(start, 500, events, 1)).isEqualTo(new TankSimulator(noisy).run(start, 500, events, 1));
    }

    @Test
    void anotherSeedIsAnotherWeekOfNoise() {
        TankPlan noisy = plan.withParameters(TankParameters.DEFAULT.with(TankParameter.NOISE_SIGMA, 0.3));
        TankState one = new TankSimulator(noisy).advance(start, 168, List.of());
        TankState other = new TankSimulator(noisy.withSeed(2)).advance(start, 168, List.of());
        assertThat(one.of(Stock.SKIMMATE_ML)).isNotEqualTo(other.of(Stock.SKIMMATE_ML));
    }

    @Test
    void aBranchLeavesTheTrunkAlone() {
        TankState fork = simulator.advance(start, 48, List.of());
        TankState trunk = simulator.advance(fork, 96, List.of());
        TankState branch =
                simulator.advance(fork, 96, List.of(new TankEvent.WeirSet(50, fork.of(Stock.WEIR_CREST_MM) + 4)));
        assertThat(branch.of(Stock.SKIMMATE_ML)).isGreaterThan(trunk.of(Stock.SKIMMATE_ML));
        assertThat(simulator.advance(fork, 96, List.of())).isEqualTo(trunk);
    }

    @Test
    void theTanksSkimmerIsTheOperatingPointOfTheUnit() {
        TankState state = simulator.advance(start, 24 * 10, List.of());
        OperatingPoint point = OperatingPoint.of(plan.unit(), simulator.settings(state));
        assertThat(simulator.operatingPoint(state)).isEqualTo(point);
        FoamOutput output = SkimmerLaw.of(plan.unit()).at(simulator.settings(state));
        assertThat(output.skimmateMlPerDay()).isEqualTo(point.skimmateMlPerDay());
        assertThat(output.strengthMgPerLitre()).isEqualTo(point.strengthMgPerLitre());
        assertThat(output.flooding()).isEqualTo(point.foamState() == FoamState.FLOODING);
    }

    @Test
    void aVesselIsFullAtTheHourThatItsSteadyFillingSays() {
        TankPlan cupOnly =
                plan.withWaste(WasteRoute.CUP_ONLY).withParameters(TankParameters.DEFAULT.only(TankProcess.SKIMMING));
        TankState before = start.with(Stock.SKIMMATE_ML_PER_DAY, 240);
        TankRun run = new TankSimulator(cupOnly, Tanks.steady(240, 200)).run(before, 24 * 7, List.of(), 0.1);
        double fullAtHours = cupOnly.unit().cupMl() / 10;
        assertThat(run.samples())
                .allSatisfy(each -> assertThat(each.is(Stock.CUP_FULL)).isEqualTo(each.hours() > fullAtHours));
        assertThat(run.end().of(Stock.CUP_ML)).isCloseTo(cupOnly.unit().cupMl(), within(1e-3));
    }

    @Test
    void aVesselThatIsExactlyFullOrEmptyIsSoAtOnceAndHoldsNobodyUp() throws InterruptedException {
        TankPlan cupOnly = plan.withWaste(WasteRoute.CUP_ONLY);
        TankPlan drained = plan.withWaste(WasteRoute.container(5));
        TankState still = start.with(Stock.INJECTOR_ON, 0).with(Stock.TOP_OFF_ON, 0);
        comesThrough(cupOnly, still.with(Stock.CUP_ML, cupOnly.unit().cupMl()), List.of(), Stock.CUP_FULL);
        comesThrough(cupOnly, still, List.of(new TankEvent.Fouled(3, TankPart.CUP, 1)), Stock.CUP_FULL);
        comesThrough(drained, still, List.of(new TankEvent.Fouled(3, TankPart.CONTAINER, 1)), Stock.CONTAINER_FULL);
        comesThrough(drained, start, List.of(new TankEvent.Fouled(3, TankPart.CONTAINER, 1)), Stock.CONTAINER_FULL);
        comesThrough(drained, still, List.of(new TankEvent.Fouled(3, TankPart.RESERVOIR, 1)), Stock.RESERVOIR_EMPTY);
        comesThrough(plan, still.with(Stock.RESERVOIR_LITRES, 0), List.of(), Stock.RESERVOIR_EMPTY);
    }

    private static void comesThrough(TankPlan plan, TankState from, List<TankEvent> events, int flag)
            throws InterruptedException {
        TankSimulator some = new TankSimulator(plan);
        CountedWork<TankState> day = CountedWork.of(() -> some.advance(from, 24, events), 30_000);
        assertThat(day.answer().is(flag)).isTrue();
        assertThat(day.steps()).isLessThan(2_000);
        assertThat(some.done(from, events).is(flag)).isTrue();
    }

    @Test
    void aVesselThatIsFilledHalfWayAgainIsNotFull() {
        TankPlan cupOnly = plan.withWaste(WasteRoute.CUP_ONLY);
        TankState full = new TankSimulator(cupOnly).done(start, List.of(new TankEvent.Fouled(0, TankPart.CUP, 1)));
        TankState half = new TankSimulator(cupOnly).done(full, List.of(new TankEvent.Fouled(0, TankPart.CUP, 0.5)));
        assertThat(full.is(Stock.CUP_FULL)).isTrue();
        assertThat(half.is(Stock.CUP_FULL)).isFalse();
    }

    @Test
    void aRunStopsWithinAStretchWithoutEvents() throws InterruptedException {
        TankPlan unfed = plan.withFeeding(new Feeding(0, 1));
        CountedWork<TankState> stopped =
                CountedWork.stoppedAt(20, () -> new TankSimulator(unfed).advance(start, 24 * 30, List.of()), 30_000);
        assertThat(stopped.failure()).isInstanceOf(CancellationException.class);
        assertThat(stopped.steps()).isEqualTo(20);
    }

    @Test
    void aReservoirLastsAsLongAsEvaporationSays() {
        TankPlan evaporate =
                plan.withParameters(TankParameters.DEFAULT.only(TankProcess.EVAPORATION, TankProcess.TOP_OFF));
        TankRun run = new TankSimulator(evaporate).run(start, 24 * 20, List.of(), 1);
        double kgPerDay = Evaporation.ashraeKgPerM2Day(25, 35, 22, 0.5, 0, 0.74)
                * plan.body().surfaceM2();
        double days = run.samples().stream()
                        .filter(each -> each.is(Stock.RESERVOIR_EMPTY))
                        .mapToDouble(TankState::hours)
                        .findFirst()
                        .orElseThrow()
                / 24;
        assertThat(days).isCloseTo(plan.body().reservoirLitres() / kgPerDay, withinPercentage(2));
    }

    @Test
    void noMishapBreaksTheSimulator() {
        Random random = new Random(5);
        for (int tank = 0; tank < 40; tank++) {
            List<TankEvent> events = new ArrayList<>();
            for (int i = 0; i < 25; i++) {
                events.add(Mishaps.one(random, 24 * 20 * random.nextDouble(), plan));
            }
            TankState state = simulator.advance(start, 24 * 20, events);
            for (double value : state.with(Stock.POWER_BACK_AT_HOURS, 0).all()) {
                assertThat(value).isFinite();
            }
            assertThat(TankConditions.of(plan, state).unionisedMgPerLitre()).isNotNegative();
        }
    }

    @Test
    void everyKindOfEventHasAnEffect() {
        Random random = new Random(1);
        EventEffects effects = new EventEffects(plan);
        for (int i = 0; i < 2000; i++) {
            effects.apply(new TankDraft(start), Mishaps.one(random, 0, plan));
        }
        for (Class<?> kind : TankEvent.class.getPermittedSubclasses()) {
            assertThat(effects.knows(kind)).as(kind.getSimpleName()).isTrue();
        }
    }

    @Test
    void timeDoesNotRunBackward() {
        TankState later = start.atHours(10);
        assertThatThrownBy(() -> simulator.advance(later, 9, List.of())).hasMessageContaining("untilHours");
        assertThatThrownBy(() -> simulator.run(later, 11, List.of(), 0)).hasMessageContaining("everyHours");
    }
}
