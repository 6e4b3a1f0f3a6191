package io.github.weirwise.advice;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How much a person who wants the unit back on target will still do before losing patience: so many changes since it was last
 * seen on target, so many extra readings of late (3 and 4; assumed).
 */
final class Patience {
    private static final int CHANGES = 3;
    private static final int LOOKS = 4;
    /** Looks allowed at a time once the changes are spent in vain: then it pays to look at everything before the next one. */
    private static final int LOOKS_WHEN_STUCK = 2;

    private static final Duration MEMORY = Duration.ofDays(14);

    private final Situation situation;

    Patience(Situation situation) {
        this.situation = situation;
    }

    /** Changes left, at least 1: whoever has lost patience still does the next thing, but no more. */
    int changesLeft() {
        return Math.max(1, CHANGES - changes());
    }

    /** Weir moves and services since the unit was last seen on target, at most of the last fortnight. */
    private int changes() {
        Instant since = Times.earlier(situation.now(), MEMORY);
        int changes = 0;
        for (JournalEntry entry : situation.journal().entries()) {
            if (entry instanceof WeirMove || entry instanceof Service) {
                changes += entry.at().isAfter(since) ? 1 : 0;
            } else if (entry instanceof Reading reading && onTarget(reading)) {
                changes = 0;
            }
        }
        return changes;
    }

    private boolean onTarget(Reading reading) {
        return reading.find(Observation.CupVolume.class)
                .filter(cup -> !cup.full())
                .filter(cup -> situation.unit().target().skimmateBandMlPerDay().contains(cup.mlPerDay()))
                .isPresent();
    }

    /** Extra readings left, 0 or more. */
    int looksLeft() {
        Instant since = Times.earlier(situation.now(), MEMORY);
        long looks = situation.journal().all(Reading.class).stream()
                .filter(reading -> reading.at().isAfter(since))
                .flatMap(reading -> reading.observations().stream())
                .map(LookOf::kind)
                .flatMap(Optional::stream)
                .filter(seen -> !seen.routine())
                .count();
        int left = (int) Math.max(0, LOOKS - looks);
        return changes() >= CHANGES ? Math.max(left, LOOKS_WHEN_STUCK) : left;
    }
}
