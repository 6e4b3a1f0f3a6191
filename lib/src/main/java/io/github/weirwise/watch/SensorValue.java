package io.github.weirwise.watch;

import java.time.Instant;
import java.util.Objects;

/**
 * One value as a sensor sent it; it may be nonsense, which the watch counts and passes over.
 *
 * @param at when, by the sensor's clock
 * @param kind what was measured
 * @param value in the kind's unit; any number, also NaN
 * @since 0.1
 */
public record SensorValue(Instant at, SensorKind kind, double value) {
    /** Rejects nulls. */
    public SensorValue {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(kind, "kind");
    }
}
