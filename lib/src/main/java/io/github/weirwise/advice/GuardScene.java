package io.github.weirwise.advice;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the guard goes by: what was noted of the unit, and the clock. No belief, no probability.
 *
 * @param noted what the journal says up to now
 * @param now the present
 * @param looks readings that can be taken at this unit
 */
record GuardScene(Noted noted, Instant now, Set<LookKind> looks) {

    static GuardScene of(SkimmerUnit unit, Settings start, Journal journal, Instant now, Set<LookKind> looks) {
        return new GuardScene(Noted.of(unit, start, journal.until(now)), now, looks);
    }

    SkimmerUnit unit() {
        return noted.unit();
    }

    /** Settings before the first entry. */
    Settings start() {
        return noted.start();
    }

    /** Settings as noted now. */
    Settings settings() {
        return noted.settings();
    }

    /** A look at the foam, or into the cup where that cannot be taken; empty where neither can. */
    Optional<Step> foamLook() {
        return Stream.of(LookKind.FOAM_LOOK, LookKind.CUP_VOLUME)
                .filter(looks::contains)
                .findFirst()
                .map(Step.Look::new);
    }

    /** Whether an instant lies within the last so many hours; total even at the ends of time. */
    boolean within(Instant at, Duration age) {
        return Duration.between(at, now).compareTo(age) <= 0;
    }
}
