package io.github.weirwise.demo.panel;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.desk.Background;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Work cut into slices, with the event queue played by hand. */
class SlicesTest {
    private final Deque<Runnable> events = new ArrayDeque<>();
    private final List<String> done = new ArrayList<>();
    private final Slices slices = new Slices(new Background() {
        @Override
        public <T> void run(Supplier<T> work, Consumer<T> then) {
            throw new AssertionError("nothing is worked out elsewhere here");
        }

        @Override
        public void soon(Runnable piece) {
            events.add(piece);
        }
    });

    private void event() {
        events.remove().run();
    }

    @Test
    void oneSliceAnEventAndARestAfterEach() {
        slices.between(() -> done.add("rest"));
        slices.add(() -> done.add("a"));
        slices.add(() -> done.add("b"));
        assertThat(events).as("not started yet").isEmpty();
        slices.start();
        slices.start();
        assertThat(events).as("started twice, begun once").hasSize(1);
        event();
        assertThat(done).containsExactly("a");
        event();
        event();
        assertThat(done).containsExactly("a", "rest", "b");
        event();
        assertThat(done).containsExactly("a", "rest", "b", "rest");
        assertThat(events).isEmpty();
    }

    @Test
    void whatIsAddedOnTheWayFollowsByItself() {
        slices.start();
        slices.add(() -> slices.add(() -> done.add("late")));
        event();
        event();
        event();
        assertThat(done).containsExactly("late");
    }

    @Test
    void atOnceAllIsDoneInOrder() {
        Slices atOnce = new Slices(Background.AT_ONCE);
        atOnce.add(() -> done.add("a"));
        atOnce.add(() -> done.add("b"));
        atOnce.start();
        assertThat(done).containsExactly("a", "b");
    }
}
