package io.github.weirwise.advice;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Air that is off, or was turned down against a flood, and how it comes back.
 *
 * @param usual air to come back to, L/h
 * @param now air as noted, L/h
 * @param changedAt when the air was last changed; empty when it is off from the start
 * @param against whether it went down within half a day of a flood that was seen
 */
record AirState(double usual, double now, Optional<Instant> changedAt, boolean against) {
    /** Air that stands reduced for longer than this is meant to be so. */
    private static final Duration EPISODE = Duration.ofDays(2);

    /** The state of the air; empty when it runs as usual. */
    static Optional<AirState> in(GuardScene scene) {
        AirNoted noted = scene.noted().air();
        double air = scene.settings().airLitresPerHour();
        boolean current = air == 0
                || noted.changedAt().filter(at -> scene.within(at, EPISODE)).isPresent();
        return noted.low() && current
                ? Optional.of(new AirState(noted.usual(), air, noted.changedAt(), noted.against()))
                : Optional.empty();
    }
}
