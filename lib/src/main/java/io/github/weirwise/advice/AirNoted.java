package io.github.weirwise.advice;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How the air was changed.
 *
 * @param usual air to come back to, L/h
 * @param low whether it is off, or was turned down against a flood and is not back yet
 * @param against whether it went down within half a day of a flood that was seen
 * @param changedAt when it was last changed
 */
record AirNoted(double usual, boolean low, boolean against, Optional<Instant> changedAt) {
    /** Set lower than this share of the usual air it is on its way back, not there yet. */
    private static final double BACK = 0.95;
    /** Air that stands reduced for longer than this is meant to be so. */
    private static final Duration EPISODE = Duration.ofDays(2);

    static AirNoted before(SkimmerUnit unit, Settings start) {
        double air = start.airLitresPerHour();
        return new AirNoted(air > 0 ? air : unit.ratedAirLitresPerHour(), air == 0, false, Optional.empty());
    }

    AirNoted after(JournalEntry entry, Settings before, Settings after, Optional<FloodSeen> flood) {
        double air = after.airLitresPerHour();
        if (!(entry instanceof SettingChange) || air == before.airLitresPerHour()) {
            return this;
        }
        boolean flooded = !low
                && flood.filter(seen -> Duration.between(seen.at(), entry.at()).compareTo(FloodSeen.FRESH) <= 0)
                        .isPresent();
        boolean stillLow = air == 0 || air < BACK * usual && (low || flooded);
        return new AirNoted(
                stillLow ? usual : air, stillLow, stillLow && (against || flooded), Optional.of(entry.at()));
    }

    /** Whether it does not run as usual now: it is off, or was turned down so lately that it is not meant to stay so. */
    boolean isAway(GuardScene scene) {
        return low
                && (scene.settings().airLitresPerHour() == 0
                        || changedAt.filter(at -> scene.within(at, EPISODE)).isPresent());
    }
}
