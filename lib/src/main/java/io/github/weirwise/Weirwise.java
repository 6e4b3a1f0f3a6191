package io.github.weirwise;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/**
 * The front door: from a unit, its settings and its journal to the next small, safe step.
 *
 * <p>All methods are pure and thread-safe: no state is kept, no thread is started, no file is touched.
 *
 * @since 0.1
 */
public final class Weirwise {
    private Weirwise() {}

    /**
     * The next step, with default options.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry of the journal
     * @param journal what was seen, done and what happened; entries after {@code now} are left out
     * @param now the present
     */
    public static Advice advise(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        return advise(unit, start, journal, now, AdviserOptions.DEFAULT);
    }

    /** The next step, with chosen options. */
    public static Advice advise(
            SkimmerUnit unit, Settings start, Journal journal, Instant now, AdviserOptions options) {
        return new Adviser(options).advise(unit, start, journal, now);
    }

    /** How the unit runs at rest with the given settings. */
    public static OperatingPoint operatingPoint(SkimmerUnit unit, Settings settings) {
        return OperatingPoint.of(unit, settings);
    }
}
