package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.List;
import java.util.Objects;

/**
 * What a journal file holds.
 *
 * @param unit the unit
 * @param settings how it was set when the journal was begun
 * @param journal all entries that can be read; of those that were given the same identifier the last
 * @param spoilt lines that cannot, in order: the first thousand, and a torn last one; empty for a sound file
 * @param spoiltCount how many lines cannot be read
 * @since 0.1
 */
public record JournalContents(
        SkimmerUnit unit, Settings settings, Journal journal, List<SpoiltLine> spoilt, int spoiltCount) {
    /** Copies the list; rejects nulls. */
    public JournalContents {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(journal, "journal");
        spoilt = List.copyOf(spoilt);
    }

    /** With every line that cannot be read shown. */
    public JournalContents(SkimmerUnit unit, Settings settings, Journal journal, List<SpoiltLine> spoilt) {
        this(unit, settings, journal, spoilt, spoilt.size());
    }
}
