package io.github.weirwise.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * A number of tanks of one truth played by some entrants, tank by tank in the same order for each.
 *
 * @param truth the family
 * @param seeds the tanks' seeds
 * @param outcomes for each entrant's name, what became of each tank
 * @param seconds how long it took
 */
record Played(Truth truth, List<Long> seeds, Map<String, List<Outcome>> outcomes, double seconds) {
    private static final int THREADS = 2;

    /** Plays on two threads; the result does not depend on which is faster. */
    static Played of(Truth truth, String phase, long seed, int tanks, List<Entrant> entrants) {
        long start = System.nanoTime();
        List<Long> seeds = new ArrayList<>();
        for (int i = 0; i < tanks; i++) {
            seeds.add(Dice.tankSeed(phase, truth.word(), seed, i));
        }
        ExecutorService workers = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<Outcome>>> open = seeds.stream()
                    .map(each -> workers.submit(() -> onTank(truth, each, entrants)))
                    .toList();
            Map<String, List<Outcome>> outcomes = new LinkedHashMap<>();
            entrants.forEach(each -> outcomes.put(each.name(), new ArrayList<>()));
            for (Future<List<Outcome>> each : open) {
                List<Outcome> all = each.get();
                for (int i = 0; i < all.size(); i++) {
                    outcomes.get(entrants.get(i).name()).add(all.get(i));
                }
            }
            return new Played(truth, seeds, outcomes, (System.nanoTime() - start) / 1e9);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("A tank of truth " + truth.word() + " could not be played", e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private static List<Outcome> onTank(Truth truth, long seed, List<Entrant> entrants) {
        Plan plan = new PlanDraw(truth, seed).draw();
        return entrants.stream().map(each -> Play.of(plan, each)).toList();
    }

    /** What became of the tanks under one entrant. */
    Tally tally(String entrant) {
        return new Tally(entrant, truth, outcomes.get(entrant));
    }

    boolean has(String entrant) {
        return outcomes.containsKey(entrant);
    }
}
