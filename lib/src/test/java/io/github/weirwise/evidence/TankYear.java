package io.github.weirwise.evidence;

import io.github.weirwise.tank.SkimmerLaw;
import io.github.weirwise.tank.TankEvent;
import io.github.weirwise.tank.TankPlan;
import io.github.weirwise.tank.TankRun;
import io.github.weirwise.tank.TankSimulator;
import io.github.weirwise.tank.TankStart;
import io.github.weirwise.tank.TankState;
import io.github.weirwise.unit.FirstRoundUnits;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How long a simulated year with a state every hour takes, on one thread, after warming up. */
public final class TankYear {
    private static final int WARM_UP = 40;
    private static final int RUNS = 31;

    private final TankSimulator simulator;
    private final TankState start;
    private final List<TankEvent> events;

    /** The small default unit on its usual tank, kept the usual way. */
    public TankYear() {
        TankPlan plan = TankScenes.plan(FirstRoundUnits.small());
        simulator = new TankSimulator(plan);
        start = TankStart.mature(plan, TankScenes.onTarget(plan.unit()));
        events = TankScenes.usualYear(plan);
    }

    /** One year, a state every hour. */
    public TankRun run() {
        return simulator.run(start, TankScenes.YEAR_HOURS, events, 1);
    }

    static void run(String[] options) {
        TankYear year = new TankYear();
        for (int i = 0; i < WARM_UP; i++) {
            year.run();
        }
        double[] ms = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long from = System.nanoTime();
            year.run();
            ms[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(ms);
        System.out.printf(
                Locale.ROOT,
                "tank-year with hourly output: median %.1f ms, quickest %.1f ms, slowest %.1f ms of %d runs%n",
                ms[RUNS / 2],
                ms[0],
                ms[RUNS - 1],
                RUNS);
        System.out.printf(
                Locale.ROOT,
                "result: tankYearMs=%.2f hours=%d lawCalls=%d%n",
                ms[RUNS / 2],
                year.run().samples().size(),
                year.lawCalls());
    }

    private int lawCalls() {
        int[] calls = {0};
        SkimmerLaw law = SkimmerLaw.of(simulator.plan().unit());
        SkimmerLaw counting = settings -> {
            calls[0]++;
            return law.at(settings);
        };
        new TankSimulator(simulator.plan(), counting).advance(start, TankScenes.YEAR_HOURS, events);
        return calls[0];
    }
}
