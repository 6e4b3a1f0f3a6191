package io.github.weirwise.trial;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/** Whoever decides what to do next on one tank. A new one is made for every tank. */
@FunctionalInterface
interface Policy {
    /** The next step from what is known now. */
    Decision next(SkimmerUnit unit, Settings startSettings, Journal journal, Instant now);
}
