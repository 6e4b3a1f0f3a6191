package io.github.weirwise.reading;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.Objects;

/**
 * The weir was set by hand; a hand lands within about 1 mm (common practice).
 *
 * @param at when
 * @param toCrestMm where its mark stands now, over the chamber floor, 1 to 2000 mm
 * @param probe whether it was announced as a small trial move
 * @since 0.1
 */
public record WeirMove(Instant at, double toCrestMm, boolean probe) implements JournalEntry {
    private static final Limit TO_CREST_MM =
            Limit.of("toCrestMm", 1, 2000, Unit.MILLIMETRE, "reading.try.giveTheCrestsHeight");

    /** Checks the range. */
    public WeirMove {
        Objects.requireNonNull(at, "at");
        TO_CREST_MM.check(toCrestMm);
    }

    @Override
    public Settings settingsAfter(Settings before) {
        return before.withWeirCrestMm(toCrestMm);
    }
}
