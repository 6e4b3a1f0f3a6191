package io.github.weirwise.advice;

import java.time.Duration;
import java.time.Instant;

/** Sums of instants and durations that stop at the ends of time instead of failing there. */
final class Later {
    private Later() {}

    static Instant than(Instant from, Duration wait) {
        boolean beyond = Duration.between(from, Instant.MAX).compareTo(wait) < 0;
        return beyond ? Instant.MAX : from.plus(wait);
    }
}
