package io.github.weirwise.watch;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.concurrent.Flow;

/**
 * A {@link SensorWatch} between a publisher of values and one subscriber to calls.
 *
 * <p>Back-pressure: values are asked for in small batches, so a fast publisher waits while the adviser thinks. A slow
 * subscriber never holds the sensors up: of each matter only the newest call waits for it, so at most one a matter, the most
 * pressing first. Everything runs on the threads of the publisher and the subscriber; none is started. A failure of the
 * book or the counsel cancels the stream and is passed on.
 *
 * @since 0.1
 */
public final class WatchProcessor implements Flow.Processor<SensorValue, Attention> {
    private static final int BATCH = 64;

    private final SensorWatch watch;
    private final Object lock = new Object();
    private final Deque<Attention> waiting = new ArrayDeque<>();
    private Flow.Subscription publisher;
    private Flow.Subscriber<? super Attention> subscriber;
    private int takenOfBatch;
    private long demand;
    private boolean ended;
    private Throwable failure;
    private boolean closed;
    private boolean telling;

    /** A processor around a watch that nobody else uses. */
    public WatchProcessor(SensorWatch watch) {
        this.watch = Objects.requireNonNull(watch, "watch");
    }

    @Override
    public void onSubscribe(Flow.Subscription subscription) {
        Objects.requireNonNull(subscription, "subscription");
        boolean second;
        synchronized (lock) {
            second = publisher != null || closed;
            publisher = second ? publisher : subscription;
        }
        if (second) {
            subscription.cancel();
        } else {
            subscription.request(BATCH);
        }
    }

    @Override
    public void onNext(SensorValue value) {
        Objects.requireNonNull(value, "value");
        synchronized (lock) {
            if (closed || ended) {
                return;
            }
        }
        try {
            watch.take(value).forEach(this::keep);
        } catch (RuntimeException failed) {
            publisher.cancel();
            onError(failed);
            return;
        }
        tell();
        takenOfBatch++;
        if (takenOfBatch == BATCH / 2) {
            takenOfBatch = 0;
            publisher.request(BATCH / 2);
        }
    }

    @Override
    public void onError(Throwable failed) {
        Objects.requireNonNull(failed, "failed");
        end(failed);
    }

    @Override
    public void onComplete() {
        end(null);
    }

    private void end(Throwable failed) {
        synchronized (lock) {
            if (!ended) {
                ended = true;
                failure = failed;
            }
        }
        tell();
    }

    /** What was done so far; to be asked on the publisher's thread or after the end. */
    public WatchCounts counts() {
        return watch.counts();
    }

    @Override
    public void subscribe(Flow.Subscriber<? super Attention> newcomer) {
        Objects.requireNonNull(newcomer, "newcomer");
        boolean second;
        synchronized (lock) {
            second = subscriber != null;
            telling = telling || !second; // nothing is told before onSubscribe has returned
            subscriber = second ? subscriber : newcomer;
        }
        newcomer.onSubscribe(second ? new Refused() : new Calls());
        if (second) {
            newcomer.onError(new IllegalStateException("a watch has one subscriber; share its calls behind it"));
            return;
        }
        synchronized (lock) {
            telling = false;
        }
        tell();
    }

    private void keep(Attention call) {
        synchronized (lock) {
            waiting.removeIf(each -> each.matter() == call.matter());
            waiting.add(call);
        }
    }

    /** Tells what may be told, one thread at a time; a thread that comes meanwhile leaves its news to the one at work. */
    private void tell() {
        synchronized (lock) {
            if (telling || subscriber == null) {
                return;
            }
            telling = true;
        }
        try {
            for (Runnable next = next(); next != null; next = next()) {
                next.run();
            }
        } catch (RuntimeException broken) {
            // A subscriber that throws has broken the contract of Flow; it gets nothing more.
            new Calls().cancel();
            throw broken;
        }
    }

    /** The next signal; null, and the floor free for another thread, when there is none now. */
    private Runnable next() {
        synchronized (lock) {
            if (!closed && demand > 0 && !waiting.isEmpty()) {
                Attention call = mostPressing();
                demand -= demand == Long.MAX_VALUE ? 0 : 1;
                return () -> subscriber.onNext(call);
            }
            if (!closed && ended && (waiting.isEmpty() || failure != null)) {
                closed = true;
                return failure == null ? subscriber::onComplete : () -> subscriber.onError(failure);
            }
            telling = false;
            return null;
        }
    }

    private Attention mostPressing() {
        Attention first = waiting.peek();
        for (Attention each : waiting) {
            first = each.matter().compareTo(first.matter()) < 0 ? each : first;
        }
        waiting.remove(first);
        return first;
    }

    private final class Calls implements Flow.Subscription {
        @Override
        public void request(long count) {
            if (count <= 0) {
                cancelPublisher();
                end(new IllegalArgumentException("request(" + count + "), must be 1 or more"));
                return;
            }
            synchronized (lock) {
                demand = demand + count < 0 ? Long.MAX_VALUE : demand + count;
            }
            tell();
        }

        @Override
        public void cancel() {
            synchronized (lock) {
                closed = true;
                waiting.clear();
            }
            cancelPublisher();
        }

        private void cancelPublisher() {
            Flow.Subscription from;
            synchronized (lock) {
                from = publisher;
            }
            if (from != null) {
                from.cancel();
            }
        }
    }

    private static final class Refused implements Flow.Subscription {
        @Override
        public void request(long count) {}

        @Override
        public void cancel() {}
    }
}
