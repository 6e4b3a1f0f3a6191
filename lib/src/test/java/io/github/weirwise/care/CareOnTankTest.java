package io.github.weirwise.care;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.tank.Stock;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPart;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.tank.Tanks;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the care plan promises of a task is what the simulated tank does. */
class CareOnTankTest {
    private static final double DIRT = 0.5;
    private static final double A_MOMENT = 1e-3;

    private final TankPlan plan = Tanks.plan();
    private final TankSimulator simulator = new TankSimulator(plan);
    private final TankState start = Tanks.mature(plan);
    private final double now = start.hours();

    /** Common practice: foam comes back 4 to 24 h after the neck was washed. */
    @Test
    void afterAWashFoamIsAwayAsLongAsTheTaskSays() {
        TankEvent wash = new TankEvent.Serviced(now, TankPart.NECK);
        double back = after(start, 96, wash).of(Stock.SKIMMATE_ML_PER_DAY);
        double hours = 0;
        while (after(start, hours, wash).of(Stock.SKIMMATE_ML_PER_DAY) < 0.5 * back) {
            hours++;
        }
        assertThat(CareTask.WASH_NECK_AND_CUP.foamAwayHours().contains(hours))
                .as("%s h", hours)
                .isTrue();
    }

    @Test
    void rinsingThePadLetsTheWaterFallFreeAgain() {
        TankState clogged = after(start, 1, new TankEvent.Fouled(now, TankPart.PAD, 1));
        TankState rinsed = after(clogged, 1, new TankEvent.Serviced(clogged.hours(), TankPart.PAD));
        assertThat(simulator.settings(rinsed).condition().levelBeyondWeirMm())
                .isLessThan(simulator.settings(clogged).condition().levelBeyondWeirMm());
    }

    private TankState after(TankState from, double hours, TankEvent event) {
        return simulator.advance(from, from.hours() + hours, List.of(event));
    }
}
