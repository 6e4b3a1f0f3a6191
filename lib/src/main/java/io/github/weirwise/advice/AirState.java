package io.github.weirwise.advice;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.unit.Settings;
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

    /** Set lower than this share of the usual air it is on its way back, not there yet. */
    private static final double BACK = 0.95;

    /** The state of the air; empty when it runs as usual. */
    static Optional<AirState> in(GuardScene scene) {
        double usual = scene.start().airLitresPerHour() > 0
                ? scene.start().airLitresPerHour()
                : scene.unit().ratedAirLitresPerHour();
        Settings before = scene.start();
        Instant changedAt = null;
        boolean low = before.airLitresPerHour() == 0;
        boolean against = false;
        for (JournalEntry entry : scene.journal().entries()) {
            Settings after = entry.settingsAfter(before);
            if (entry instanceof SettingChange && after.airLitresPerHour() != before.airLitresPerHour()) {
                double air = after.airLitresPerHour();
                boolean flood = !low && afterFlood(scene, entry.at());
                low = air == 0 || air < BACK * usual && (low || flood);
                against = low && (against || flood);
                usual = low ? usual : air;
                changedAt = entry.at();
            }
            before = after;
        }
        double air = scene.settings().airLitresPerHour();
        boolean current = air == 0 || changedAt != null && scene.within(changedAt, EPISODE);
        return low && current
                ? Optional.of(new AirState(usual, air, Optional.ofNullable(changedAt), against))
                : Optional.empty();
    }

    private static boolean afterFlood(GuardScene scene, Instant at) {
        GuardScene then = GuardScene.of(scene.unit(), scene.start(), scene.journal(), at, scene.looks());
        return FloodSeen.lastIn(then)
                .filter(flood -> then.within(flood.at(), FloodSeen.FRESH))
                .isPresent();
    }
}
