package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Background;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Work on the event thread cut into slices, one an event, so that keys and mouse are heard in between. Nothing is done until
 * it is started.
 */
public final class Slices {
    private final Background background;
    private final Deque<Runnable> left = new ArrayDeque<>();
    private Runnable between = () -> {};
    private boolean started;
    private boolean waiting;
    private boolean running;

    /** Work that is done at the pace of {@code background}. */
    public Slices(Background background) {
        this.background = background;
    }

    /** One more slice at the end. */
    public void add(Runnable slice) {
        left.add(slice);
        if (started) {
            go();
        }
    }

    /** Does this after each slice, in an event of its own. */
    public void between(Runnable each) {
        between = each;
    }

    /** Begins; slices that are added later follow by themselves. */
    public void start() {
        started = true;
        go();
    }

    private void go() {
        if (!waiting && !running && !left.isEmpty()) {
            waiting = true;
            background.soon(this::next);
        }
    }

    private void rest() {
        waiting = false;
        between.run();
        go();
    }

    private void next() {
        waiting = false;
        Runnable slice = left.poll();
        if (slice != null) {
            running = true;
            slice.run();
            running = false;
            waiting = true;
            background.soon(this::rest);
        }
    }
}
