package io.github.weirwise.evidence;

import io.github.weirwise.json.DocumentLimits;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.report.CountedWork;
import java.util.Locale;
import java.util.Map;

/** Command {@code request-time}: how much of the processor the dearest legal requests take, on one thread, by code that is warm. */
final class RequestTime {
    private static final long MOST_MILLIS = 300_000;

    private RequestTime() {}

    /**
     * What one request came to.
     *
     * @param answer the answer
     * @param steps how often the work could have been stopped, so how much there was
     * @param seconds of the processor that the whole program took, so that a busy machine counts for nothing
     */
    record Took(String answer, long steps, double seconds) {}

    static void run(String[] options) throws InterruptedException {
        for (String request : DearRequests.of(300).values()) {
            asked(request);
        }
        double slowest = 0;
        String which = "";
        Map<String, String> requests = DearRequests.of(DocumentLimits.MOST_ELEMENTS);
        for (Map.Entry<String, String> each : requests.entrySet()) {
            Took took = asked(each.getValue());
            System.out.printf(
                    Locale.ROOT,
                    "%-10s %,10d characters, %,9d steps, %6.2f s, answer of %,d characters%n",
                    each.getKey(),
                    each.getValue().length(),
                    took.steps(),
                    took.seconds(),
                    took.answer().length());
            if (took.answer().contains("\"error\":")) {
                throw new IllegalStateException(took.answer());
            }
            which = took.seconds() > slowest ? each.getKey() : which;
            slowest = Math.max(slowest, took.seconds());
        }
        System.out.println("the slowest is " + which);
        System.out.printf(Locale.ROOT, "result: requests=%d slowestSeconds=%.2f%n", requests.size(), slowest);
    }

    /** Asks on a thread that counts how often the work looks whether it was stopped. */
    static Took asked(String request) throws InterruptedException {
        double before = processorSeconds();
        CountedWork<String> work = CountedWork.of(() -> WeirwiseJson.reply(request), MOST_MILLIS);
        return new Took(work.answer(), work.steps(), processorSeconds() - before);
    }

    private static double processorSeconds() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
    }
}
