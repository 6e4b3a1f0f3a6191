package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Something that takes a while to make: made once, away from the event thread, when somebody waits for it. Event thread only. */
final class Later<T> {
    private final Supplier<T> work;
    private final Background background;
    private final List<Consumer<T>> waiting = new ArrayList<>();
    private Optional<T> made = Optional.empty();
    private boolean begun;

    Later(Supplier<T> work, Background background) {
        this.work = work;
        this.background = background;
    }

    /** It, if it is there. */
    Optional<T> now() {
        return made;
    }

    /** Puts another in its place. */
    void is(T other) {
        made = Optional.of(other);
    }

    /** Does this with it as soon as it is there. */
    void then(Consumer<T> what) {
        if (made.isPresent()) {
            what.accept(made.get());
            return;
        }
        waiting.add(what);
        if (!begun) {
            begun = true;
            background.run(work, found -> {
                made = made.or(() -> Optional.of(found));
                List<Consumer<T>> all = List.copyOf(waiting);
                waiting.clear();
                all.forEach(each -> each.accept(made.get()));
            });
        }
    }
}
