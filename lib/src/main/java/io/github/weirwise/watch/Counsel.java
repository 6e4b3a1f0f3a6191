package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/**
 * Who is asked what to do.
 *
 * @since 0.1
 */
@FunctionalInterface
public interface Counsel {
    /** The next step for a unit with this journal at this time. */
    Advice advise(Journal journal, Instant now);

    /**
     * The library's own adviser for one unit. It keeps what the journal came to, so that one that grew costs its new entries only; one thread
     * at a time.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry of the journal
     * @param options how the adviser works
     */
    static Counsel of(SkimmerUnit unit, Settings start, AdviserOptions options) {
        return new KeptCounsel(unit, start, options);
    }
}
