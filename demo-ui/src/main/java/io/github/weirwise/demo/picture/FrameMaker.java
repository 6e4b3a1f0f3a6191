package io.github.weirwise.demo.picture;

import java.awt.EventQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** Makes frames on one background thread; of orders that pile up only the newest is made. */
final class FrameMaker {
    private static final ExecutorService PAINTING = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "picture-painting");
        thread.setDaemon(true);
        return thread;
    });

    private final AtomicReference<Frame.Order> wanted = new AtomicReference<>();
    private final Consumer<Frame> done;

    FrameMaker(Consumer<Frame> done) {
        this.done = done;
    }

    /** Asks for a frame; it is handed over on the event thread. */
    void ask(Frame.Order order) {
        if (wanted.getAndSet(order) == null) {
            PAINTING.execute(this::work);
        }
    }

    private void work() {
        Frame.Order order = wanted.getAndSet(null);
        if (order != null) {
            Frame frame = Frame.make(order);
            EventQueue.invokeLater(() -> done.accept(frame));
        }
    }
}
