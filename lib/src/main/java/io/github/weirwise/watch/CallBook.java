package io.github.weirwise.watch;

import io.github.weirwise.watch.Attention.Matter;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When a person was called for what: nobody is called twice a day for one matter. */
final class CallBook {
    /** A danger that was away for this long is a new one when it comes back. */
    private static final Duration CALM = Duration.ofHours(6);

    private record Key(Matter matter, Optional<SensorKind> sensor) {}

    private final Duration remindAfter;
    private final Map<Key, Instant> last = new LinkedHashMap<>();

    CallBook(Duration remindAfter, List<WatchState.Called> calls) {
        this.remindAfter = remindAfter;
        calls.forEach(each -> last.put(new Key(each.matter(), each.sensor()), each.at()));
    }

    /** Whether to call now; if so it is noted. */
    boolean call(Matter matter, Optional<SensorKind> sensor, Instant at) {
        Key key = new Key(matter, sensor);
        Instant before = last.get(key);
        if (before != null && at.isBefore(before.plus(remindAfter))) {
            return false;
        }
        last.put(key, at);
        return true;
    }

    /** The adviser sees no danger. */
    void calm(Instant at) {
        last.entrySet()
                .removeIf(each -> each.getKey().matter() == Matter.SAFETY
                        && !at.isBefore(each.getValue().plus(CALM)));
    }

    List<WatchState.Called> calls() {
        List<WatchState.Called> calls = new ArrayList<>();
        last.forEach((key, at) -> calls.add(new WatchState.Called(key.matter(), key.sensor(), at)));
        return calls;
    }
}
