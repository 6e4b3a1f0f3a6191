package io.github.weirwise.watch;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All that a watch keeps between values, so that it can go on after a restart as if nothing had been.
 *
 * @param time the watch's time; empty before the first value
 * @param windowStart when the window that is open began
 * @param readAt when a reading was last written
 * @param askedAt when the adviser was last asked
 * @param sensors one for each sensor that ever spoke
 * @param calls when each matter was last called for
 * @param counts what was done so far
 * @since 0.2
 */
public record WatchState(
        Optional<Instant> time,
        Optional<Instant> windowStart,
        Optional<Instant> readAt,
        Optional<Instant> askedAt,
        List<SensorState> sensors,
        List<Called> calls,
        WatchCounts counts) {
    /** A watch that has seen nothing yet. */
    public static final WatchState NEW = new WatchState(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            new WatchCounts(0, 0, 0, 0, 0, 0, 0));

    /**
     * When a matter was last called for.
     *
     * @param matter which
     * @param sensor of which sensor, when it is about one
     * @param at when
     */
    public record Called(Attention.Matter matter, Optional<SensorKind> sensor, Instant at) {}

    /** Copies the lists; rejects nulls. */
    public WatchState {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(windowStart, "windowStart");
        Objects.requireNonNull(readAt, "readAt");
        Objects.requireNonNull(askedAt, "askedAt");
        sensors = List.copyOf(sensors);
        calls = List.copyOf(calls);
        Objects.requireNonNull(counts, "counts");
    }
}
