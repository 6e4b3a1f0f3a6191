package io.github.weirwise.watch;

import io.github.weirwise.watch.Attention.Matter;
import io.github.weirwise.watch.WatchState.Called;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** When a person was called for what: nobody is called twice a day for one matter. */
final class CallBook {
    /** A danger that was away for this long is a new one when it comes back. */
    private static final Duration CALM = Duration.ofHours(6);

    private final Duration remindAfter;
    private final List<Called> last;

    CallBook(Duration remindAfter, List<Called> calls) {
        this.remindAfter = remindAfter;
        last = new ArrayList<>(calls);
    }

    /** Whether to call now; if so it is noted. */
    boolean call(Matter matter, Optional<SensorKind> sensor, Instant at) {
        Predicate<Called> same =
                each -> each.matter() == matter && each.sensor().equals(sensor);
        if (last.stream().filter(same).anyMatch(each -> at.isBefore(each.at().plus(remindAfter)))) {
            return false;
        }
        last.removeIf(same);
        return last.add(new Called(matter, sensor, at));
    }

    /** The adviser sees no danger. */
    void calm(Instant at) {
        last.removeIf(
                each -> each.matter() == Matter.SAFETY && !at.isBefore(each.at().plus(CALM)));
    }

    List<Called> calls() {
        return last;
    }
}
