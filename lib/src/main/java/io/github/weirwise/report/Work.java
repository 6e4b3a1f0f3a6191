package io.github.weirwise.report;

import java.util.concurrent.CancellationException;

/**
 * How a host takes back a question: it interrupts the thread that asks, by itself or when a deadline of its own has passed. All that can
 * take long (a journal's entries, a table's rows, a tank's hours, the moves that are weighed) passes through here, a few milliseconds apart at
 * most, and stops by one exception; nothing was changed, and the same question can be asked again.
 *
 * @since 0.2
 */
public final class Work {
    private Work() {}

    /**
     * One more step of work.
     *
     * @throws CancellationException if this thread was interrupted; it stays so
     */
    public static void step() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException(PhraseBook.ENGLISH_METRIC.say(Phrase.of("report.stopped")));
        }
    }
}
