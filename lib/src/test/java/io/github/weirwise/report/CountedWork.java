package io.github.weirwise.report;

import java.util.concurrent.Callable;

/** A question on a thread of its own that counts how often the work looks whether it was stopped, and that can be stopped at such a look. */
public final class CountedWork<T> extends Thread {
    private final Callable<T> question;
    private final long stopAt;
    private T answer;
    private Exception failure;
    private long steps;

    private CountedWork(Callable<T> question, long stopAt) {
        this.question = question;
        this.stopAt = stopAt;
        setDaemon(true);
    }

    /** The question asked to its end, or until so many milliseconds have passed. */
    public static <T> CountedWork<T> of(Callable<T> question, long millis) throws InterruptedException {
        return begun(question, Long.MAX_VALUE, millis);
    }

    /** The question interrupted at one of its steps. */
    public static <T> CountedWork<T> stoppedAt(long step, Callable<T> question, long millis)
            throws InterruptedException {
        return begun(question, step, millis);
    }

    private static <T> CountedWork<T> begun(Callable<T> question, long stopAt, long millis)
            throws InterruptedException {
        CountedWork<T> work = new CountedWork<>(question, stopAt);
        work.start();
        work.join(millis);
        if (work.isAlive()) {
            throw new AssertionError("still at work after " + millis + " ms");
        }
        return work;
    }

    @Override
    public void run() {
        try {
            answer = question.call();
        } catch (Exception e) {
            failure = e;
        }
    }

    @Override
    public boolean isInterrupted() {
        steps++;
        return steps >= stopAt || super.isInterrupted();
    }

    /** What was answered; null if the question failed. */
    public T answer() {
        return answer;
    }

    /** Why there is no answer, or null. */
    public Exception failure() {
        return failure;
    }

    /** How often the work could have been stopped. */
    public long steps() {
        return steps;
    }
}
