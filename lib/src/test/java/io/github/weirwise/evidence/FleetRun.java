package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.json.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.LongAccumulator;

/** Assesses a fleet in one process on two threads, a batch at a time, keeping counts only. */
final class FleetRun {
    private static final int BATCH = 200;

    private FleetRun() {}

    /**
     * Prints how often each step was advised, then units, seconds and the peak of the heap.
     *
     * @param args number of units, seed
     */
    public static void main(String[] args) throws Exception {
        long units = Long.parseLong(args[0]);
        InventedFleet fleet = new InventedFleet(Long.parseLong(args[1]));
        LongAccumulator peakMb = new LongAccumulator(Long::max, 0);
        long start = System.nanoTime();
        Map<String, Long> steps = assess(fleet, units, peakMb);
        double seconds = (System.nanoTime() - start) / 1e9;
        steps.forEach((step, count) -> System.out.println("  " + step + ": " + count + " units"));
        long assessed = steps.values().stream().mapToLong(Long::longValue).sum();
        System.out.println(assessed + " " + seconds + " " + peakMb.get());
    }

    private static Map<String, Long> assess(InventedFleet fleet, long units, LongAccumulator peakMb) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        List<Future<Map<String, Long>>> batches = new ArrayList<>();
        for (long from = 0; from < units; from += BATCH) {
            long first = from;
            long behind = Math.min(units, from + BATCH);
            batches.add(pool.submit(() -> batch(fleet, first, behind, peakMb)));
        }
        Map<String, Long> all = new TreeMap<>();
        for (Future<Map<String, Long>> batch : batches) {
            batch.get().forEach((step, count) -> all.merge(step, count, Long::sum));
        }
        pool.shutdown();
        return all;
    }

    private static Map<String, Long> batch(InventedFleet fleet, long from, long behind, LongAccumulator peakMb) {
        Map<String, Long> steps = new TreeMap<>();
        for (long number = from; number < behind; number++) {
            Request request = fleet.request(number);
            Advice advice = Weirwise.advise(request.unit(), request.settings(), request.journal(), request.now());
            steps.merge(advice.step().getClass().getSimpleName(), 1L, Long::sum);
            peakMb.accumulate(heapMb());
        }
        return steps;
    }

    /** What the heap holds now, garbage that was not yet collected included. */
    private static long heapMb() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / (1024 * 1024);
    }
}
