package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.KeptState;
import io.github.weirwise.json.Request;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.LongAccumulator;

/**
 * Assesses a fleet in one process on two threads, a batch at a time, keeping counts only. Every unit gets the full advice with the
 * usual belief from its whole journal; nothing is skipped or kept between units.
 */
final class FleetRun {
    static final int THREADS = 2;
    private static final int BATCH = 200;
    /** Batches that wait at most, so that memory does not grow with the number of units. */
    private static final int WAITING = 16;
    /** Units with long journals that are assessed besides, to show what their length costs. */
    private static final long SETTLED_UNITS = 400;

    private static final double REPORT_SECONDS = 15;

    private final InventedFleet fleet;
    private final long units;
    private final Map<String, Long> steps = new TreeMap<>();
    private final LongAccumulator peakHeapMb = new LongAccumulator(Long::max, 0);
    private long entries;
    private long done;

    private FleetRun(InventedFleet fleet, long units) {
        this.fleet = fleet;
        this.units = units;
    }

    /**
     * Prints how often each step was advised, then one line for a program: units, seconds, peak of the heap in MB, entries a
     * journal, core-milliseconds an assessment, and the same two for units with long journals. How far it is goes to the error
     * stream.
     *
     * @param args number of units, seed
     */
    public static void main(String[] args) throws Exception {
        long units = Long.parseLong(args[0]);
        long seed = Long.parseLong(args[1]);
        FleetRun run = new FleetRun(InventedFleet.young(seed), units);
        double seconds = run.assess(true);
        FleetRun settled = new FleetRun(InventedFleet.settled(seed), Math.min(units, SETTLED_UNITS));
        double settledSeconds = settled.assess(false);
        run.steps.forEach((step, count) -> System.out.println("  " + step + ": " + count + " units"));
        System.out.println(run.done + " " + seconds + " " + run.peakHeapMb + " " + run.entriesEach() + " "
                + run.coreMs(seconds) + " " + settled.entriesEach() + " " + settled.coreMs(settledSeconds) + " "
                + kept(InventedFleet.settled(seed), Math.min(units, SETTLED_UNITS)));
    }

    /** Bytes of a settled unit's kept state, and milliseconds of one core to read it, take in a visit, advise and write it. */
    private static String kept(InventedFleet fleet, long units) {
        Adviser adviser = new Adviser(AdviserOptions.DEFAULT);
        long bytes = 0;
        long nanos = 0;
        for (long number = 0; number < units; number++) {
            Request request = fleet.request(number);
            List<JournalEntry> entries = request.journal().entries();
            int before = entries.size() - 1;
            byte[] state = KeptState.of(request.unit(), request.settings(), new Journal(entries.subList(0, before)))
                    .toBytes();
            long start = System.nanoTime();
            KeptState later = KeptState.of(state).extended(entries.subList(before, entries.size()));
            adviser.advise(later, request.now());
            bytes += later.toBytes().length;
            nanos += System.nanoTime() - start;
        }
        return bytes / units + " " + nanos / 1e6 / units;
    }

    /** Seconds for a young fleet in this process. */
    static double seconds(long units, long seed) throws Exception {
        return new FleetRun(InventedFleet.young(seed), units).assess(false);
    }

    /** What an assessment of a fleet comes to, without its time. */
    record Count(long units, long entries, Map<String, Long> steps) {}

    static Count count(InventedFleet fleet, long units) throws Exception {
        FleetRun run = new FleetRun(fleet, units);
        run.assess(false);
        return new Count(run.done, run.entries, Map.copyOf(run.steps));
    }

    private double entriesEach() {
        return (double) entries / done;
    }

    private double coreMs(double seconds) {
        return 1e3 * THREADS * seconds / done;
    }

    /** What one batch came to. */
    private record Batch(Map<String, Long> steps, long entries) {}

    private double assess(boolean aloud) throws Exception {
        long start = System.nanoTime();
        double told = 0;
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            Queue<Future<Batch>> waiting = new ArrayDeque<>();
            for (long from = 0; from < units; from += BATCH) {
                long first = from;
                long behind = Math.min(units, from + BATCH);
                waiting.add(pool.submit(() -> batch(first, behind)));
                if (waiting.size() >= WAITING) {
                    count(waiting.remove().get());
                }
                double seconds = (System.nanoTime() - start) / 1e9;
                if (aloud && seconds - told > REPORT_SECONDS) {
                    told = seconds;
                    System.err.printf(
                            Locale.ROOT,
                            "%d of %d units after %.0f s, about %.0f s to go%n",
                            done,
                            units,
                            seconds,
                            seconds * (units - done) / Math.max(1, done));
                }
            }
            while (!waiting.isEmpty()) {
                count(waiting.remove().get());
            }
        } finally {
            pool.shutdownNow();
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private void count(Batch batch) {
        batch.steps.forEach((step, count) -> {
            steps.merge(step, count, Long::sum);
            done += count;
        });
        entries += batch.entries;
    }

    private Batch batch(long from, long behind) {
        Map<String, Long> advised = new TreeMap<>();
        long read = 0;
        for (long number = from; number < behind; number++) {
            Request request = fleet.request(number);
            Advice advice = Weirwise.advise(request.unit(), request.settings(), request.journal(), request.now());
            advised.merge(advice.step().getClass().getSimpleName(), 1L, Long::sum);
            read += request.journal().entries().size();
            peakHeapMb.accumulate(heapMb());
        }
        return new Batch(advised, read);
    }

    /** What the heap holds now, garbage that was not yet collected included. */
    private static long heapMb() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / (1024 * 1024);
    }
}
