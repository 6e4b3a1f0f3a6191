package io.github.weirwise.evidence;

import io.github.weirwise.json.FuzzedReaders;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Damaged documents by the million to every reader, JSON and tables; two at a time. */
final class Fuzz {
    private static final int BATCH = 5_000;
    private static final int BATCH_MINUTES = 20;
    private static final long TOLD_EVERY = 50_000;

    private Fuzz() {}

    /**
     * Prints what came out.
     *
     * @param options none
     */
    static void run(String[] options) throws Exception {
        long documents = Long.getLong("documents", 1_000_000);
        long seed = Long.getLong("seed", 1);
        ExecutorService pool = Executors.newFixedThreadPool(2);
        Path folder = Files.createTempDirectory("weirwise-fuzz");
        List<Future<FuzzedReaders.Tally>> batches = new ArrayList<>();
        for (long from = 0; from < documents; from += BATCH) {
            long first = from;
            long behind = Math.min(documents, from + BATCH);
            Path journal = folder.resolve(first + ".jsonl");
            batches.add(pool.submit(() -> {
                FuzzedReaders.Tally tally = new FuzzedReaders(seed, journal).read(first, behind);
                Files.deleteIfExists(journal);
                return tally;
            }));
        }
        FuzzedReaders.Tally all = FuzzedReaders.Tally.NONE;
        long peakMb = 0;
        long start = System.nanoTime();
        for (Future<FuzzedReaders.Tally> batch : batches) {
            all = all.plus(inTime(batch, all.documents()));
            peakMb = Math.max(peakMb, heapMb());
            if (all.documents() % TOLD_EVERY == 0) {
                System.err.printf(
                        Locale.ROOT,
                        "%d of %d documents after %.0f s%n",
                        all.documents(),
                        documents,
                        (System.nanoTime() - start) / 1e9);
            }
        }
        pool.shutdown();
        Files.delete(folder);
        System.out.println(all.readable() + " of " + all.documents() + " damaged documents could still be read, "
                + all.answered() + " of these got an answer");
        System.out.println("result: documents=" + all.documents() + " foreignExceptions=" + all.foreignExceptions()
                + " hangs=" + all.hangs() + " readable=" + all.readable() + " answered=" + all.answered()
                + " peakHeapMb=" + peakMb);
    }

    /** A reader that never comes back would hold up the command for ever; this tells where to look instead. */
    private static FuzzedReaders.Tally inTime(Future<FuzzedReaders.Tally> batch, long before) throws Exception {
        try {
            return batch.get(BATCH_MINUTES, TimeUnit.MINUTES);
        } catch (TimeoutException e) {
            throw new IllegalStateException(
                    "a reader hangs at one of the documents from number " + before + " to " + (before + BATCH), e);
        }
    }

    /** What the heap holds now, garbage that was not yet collected included. */
    private static long heapMb() {
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / (1024 * 1024);
    }
}
