package io.github.weirwise.demo.look;

import java.awt.EventQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Paints images on one background thread; of orders that pile up only the newest is carried out. */
public final class Newest<T> {
    private static final ExecutorService PAINTING = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "painting");
        thread.setDaemon(true);
        thread.setPriority(Thread.NORM_PRIORITY - 1);
        return thread;
    });

    private final AtomicReference<Supplier<T>> wanted = new AtomicReference<>();
    private final Consumer<T> done;

    /** Hands over what was made on the event thread. */
    public Newest(Consumer<T> done) {
        this.done = done;
    }

    /** Orders something in place of what waits. */
    public void ask(Supplier<T> work) {
        if (wanted.getAndSet(work) == null) {
            PAINTING.execute(this::work);
        }
    }

    /** Orders something unless other work waits. */
    public void askAtLeisure(Supplier<T> work) {
        if (wanted.compareAndSet(null, work)) {
            PAINTING.execute(this::work);
        }
    }

    private void work() {
        Supplier<T> work = wanted.getAndSet(null);
        if (work != null) {
            T made = work.get();
            EventQueue.invokeLater(() -> done.accept(made));
        }
    }
}
