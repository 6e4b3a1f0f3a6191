package io.github.weirwise.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * All policies on the same tanks.
 *
 * @param phase name of the set of seeds: "report" or "tune"
 * @param seed seed of the whole trial
 * @param tanks how many tanks
 * @param hardship how the trial is bent
 */
record Trial(String phase, long seed, int tanks, Hardship hardship) {
    private static final int BATCH = 16;

    TankPlan plan(int tank) {
        return new TankDraw(Dice.tankSeed(phase, seed, tank), hardship).draw();
    }

    /** Plays every tank under every policy, on some threads; the result does not depend on how many. */
    List<Score> play(List<Entrant> entrants, int threads) {
        Outcome[][] outcomes = new Outcome[entrants.size()][tanks];
        AtomicInteger next = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int t = 0; t < threads; t++) {
                running.add(pool.submit(() -> playBatches(next, entrants, outcomes)));
            }
            for (Future<?> each : running) {
                each.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the trial was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a tank could not be played", e.getCause());
        } finally {
            pool.shutdownNow();
        }
        List<Score> scores = new ArrayList<>();
        for (int p = 0; p < entrants.size(); p++) {
            scores.add(new Score(entrants.get(p).name(), Arrays.asList(outcomes[p])));
        }
        return scores;
    }

    private void playBatches(AtomicInteger next, List<Entrant> entrants, Outcome[][] outcomes) {
        for (int from = next.getAndAdd(BATCH); from < tanks; from = next.getAndAdd(BATCH)) {
            for (int tank = from; tank < Math.min(tanks, from + BATCH); tank++) {
                TankPlan plan = plan(tank);
                for (int p = 0; p < entrants.size(); p++) {
                    outcomes[p][tank] = play(tank, plan, entrants.get(p));
                }
            }
        }
    }

    private Outcome play(int tank, TankPlan plan, Entrant entrant) {
        try {
            return TankRun.play(plan, entrant);
        } catch (RuntimeException e) {
            throw new IllegalStateException(
                    "policy " + entrant.name() + " failed on tank " + tank + " of phase " + phase + ", seed " + seed,
                    e);
        }
    }
}
