package io.github.weirwise.tank;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Relations: nothing is lost, whatever happens. */
class TankBalanceTest {
    private static final double YEAR = 24 * 365;
    private static final double CLOSED = 1e-9;

    @Test
    void aYearOfUsualKeepingLosesNoWaterSaltOrNitrogen() {
        for (SkimmerUnit unit : FirstRoundUnits.units()) {
            TankPlan plan = TankPlan.around(unit, unit.ratedFlowLitresPerHour() / 4);
            TankState before = Tanks.mature(plan);
            TankState after = new TankSimulator(plan).advance(before, YEAR, Routine.USUAL.events(plan, 0, YEAR));
            assertThat(TankBalance.between(plan, before, after).worst())
                    .as(unit.name())
                    .isLessThan(CLOSED);
        }
    }

    @Test
    void aYearOfMishapsLosesNothingEither() {
        for (long seed = 1; seed <= 4; seed++) {
            TankPlan plan = Tanks.plan()
                    .withWaste(seed % 2 == 0 ? WasteRoute.CUP_ONLY : new WasteRoute(true, 2, false))
                    .withSeed(seed)
                    .withParameters(TankParameters.DEFAULT.with(TankParameter.NOISE_SIGMA, 0.2));
            List<TankEvent> mishaps = Mishaps.year(seed, plan);
            TankState before = Tanks.mature(plan);
            TankState after = new TankSimulator(plan).advance(before, YEAR, mishaps);
            assertThat(TankBalance.between(plan, before, after).worst())
                    .as("seed " + seed)
                    .isLessThan(CLOSED);
            assertThat(after.of(Stock.SKIMMABLE_G)).as("seed " + seed).isPositive();
            assertThat(after.of(Stock.AMMONIA_G)).as("seed " + seed).isNotNegative();
        }
    }

    @Test
    void everyMomentOfARunIsBalancedNotOnlyItsEnd() {
        TankPlan plan = Tanks.plan();
        TankState before = Tanks.mature(plan);
        TankRun run = new TankSimulator(plan).run(before, 24 * 21, Mishaps.year(7, plan), 1);
        assertThat(run.samples()).hasSize(24 * 21);
        for (TankState state : run.samples()) {
            assertThat(TankBalance.between(plan, before, state).worst()).isLessThan(CLOSED);
        }
    }
}
