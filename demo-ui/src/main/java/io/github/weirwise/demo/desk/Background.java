package io.github.weirwise.demo.desk;

import java.util.function.Consumer;
import java.util.function.Supplier;

/** Where slow work is done; tests do it at once. */
public interface Background {
    /** Works something out and hands it over on the event thread. */
    <T> void run(Supplier<T> work, Consumer<T> then);

    /** Does something on the event thread in an event of its own, after those that wait there already. */
    void soon(Runnable piece);

    /** At once and on the same thread. */
    Background AT_ONCE = new Background() {
        @Override
        public <T> void run(Supplier<T> work, Consumer<T> then) {
            then.accept(work.get());
        }

        @Override
        public void soon(Runnable piece) {
            piece.run();
        }
    };
}
