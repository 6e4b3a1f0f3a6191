package io.github.weirwise.advice;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;

/**
 * What the guard goes by: the unit, what was noted, and the clock. No belief, no probability.
 *
 * @param unit nominal data of the unit
 * @param start settings before the first entry
 * @param settings settings as noted now
 * @param journal entries up to now
 * @param now the present
 * @param looks readings that can be taken at this unit
 */
record GuardScene(
        SkimmerUnit unit, Settings start, Settings settings, Journal journal, Instant now, Set<LookKind> looks) {

    static GuardScene of(SkimmerUnit unit, Settings start, Journal journal, Instant now, Set<LookKind> looks) {
        Journal known = journal.until(now);
        return new GuardScene(unit, start, known.settingsAfter(start), known, now, looks);
    }

    /** Whether an instant lies within the last so many hours; total even at the ends of time. */
    boolean within(Instant at, Duration age) {
        return Duration.between(at, now).compareTo(age) <= 0;
    }
}
