package io.github.weirwise.advice;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;

/**
 * Whether the foam was seen to run over. Fear of a flood alone is no reason to act at once: after the air was stopped, what
 * the foam does is not known before it was seen again.
 */
final class Flood {
    private final Situation situation;

    Flood(Situation situation) {
        this.situation = situation;
    }

    /** True when the newest reading that tells, since the pump's last restart, shows a full cup or wet, running foam. */
    boolean seen() {
        boolean seen = false;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof Reading reading && tells(reading)) {
                seen = ranOver(reading) || runs(reading);
            } else if (entry instanceof Happening happening && happening.kind() == Happening.Kind.PUMP_RESTARTED) {
                seen = false;
            }
        }
        return seen;
    }

    private static boolean tells(Reading reading) {
        return reading.find(Observation.CupVolume.class).isPresent()
                || reading.find(Observation.FoamLook.class).isPresent();
    }

    private static boolean ranOver(Reading reading) {
        return reading.find(Observation.CupVolume.class)
                .map(Observation.CupVolume::full)
                .orElse(false);
    }

    private static boolean runs(Reading reading) {
        return reading.find(Observation.FoamLook.class)
                .map(Observation.FoamLook::look)
                .filter(look -> look == FoamLookWord.RUNNY || look == FoamLookWord.STREAMING)
                .isPresent();
    }
}
