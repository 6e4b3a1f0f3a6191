package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Objects;

/**
 * What is asked: everything that is known of one unit.
 *
 * @param unit the unit
 * @param settings how it was set at the start of the journal
 * @param journal readings and actions since, in any order
 * @param now when the advice is wanted
 * @since 0.1
 */
public record Request(SkimmerUnit unit, Settings settings, Journal journal, Instant now) {
    /** Rejects nulls. */
    public Request {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(journal, "journal");
        Objects.requireNonNull(now, "now");
    }
}
