package io.github.weirwise.demo.picture;

import java.awt.EventQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Paints frames, and their foam on its way, on one background thread; of orders that pile up only the newest is made. */
final class FrameMaker {
    private static final ExecutorService PAINTING = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "picture-painting");
        thread.setDaemon(true);
        return thread;
    });

    private final AtomicReference<Supplier<Frame>> wanted = new AtomicReference<>();
    private final Consumer<Frame> done;

    FrameMaker(Consumer<Frame> done) {
        this.done = done;
    }

    /** Asks for a frame; it is handed over on the event thread. */
    void ask(Frame.Order order, double rowsMoved) {
        put(() -> Frame.make(order, rowsMoved), true);
    }

    /** Asks for a frame's foam further on, unless there is other work. */
    void creep(Frame frame, double rowsMoved) {
        put(
                () -> {
                    frame.creep(rowsMoved);
                    return frame;
                },
                false);
    }

    private void put(Supplier<Frame> work, boolean first) {
        Supplier<Frame> before = wanted.get();
        if (before != null && !first) {
            return;
        }
        if (wanted.getAndSet(work) == null) {
            PAINTING.execute(this::work);
        }
    }

    private void work() {
        Supplier<Frame> work = wanted.getAndSet(null);
        if (work != null) {
            Frame frame = work.get();
            EventQueue.invokeLater(() -> done.accept(frame));
        }
    }
}
