package io.github.weirwise.advice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.time.Duration;
import java.time.Instant;

/**
 * The pump's newest restart. Until something was read some hours after it, nobody knows whether the foam still runs over:
 * stopping the air again for fear of what was seen before the stop would never end.
 */
final class Restart {
    private static final Duration FOAM_IS_BACK = Duration.ofHours(6);

    private final Situation situation;

    Restart(Situation situation) {
        this.situation = situation;
    }

    /** True when the pump was restarted and what the foam does since then has not been seen. */
    boolean unseen() {
        Instant restarted = null;
        boolean seen = true;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof Happening happening && happening.kind() == Happening.Kind.PUMP_RESTARTED) {
                restarted = happening.at();
                seen = false;
            } else if (entry instanceof Reading reading && restarted != null) {
                seen |= ranOver(reading) || !reading.at().isBefore(restarted.plus(FOAM_IS_BACK));
            }
        }
        return !seen;
    }

    private static boolean ranOver(Reading reading) {
        return reading.find(Observation.CupVolume.class)
                .map(Observation.CupVolume::full)
                .orElse(false);
    }
}
