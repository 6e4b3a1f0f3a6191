package io.github.weirwise.trial;

import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** The adviser with nothing but the last day's entries: it cannot learn the unit. */
record ForgetfulPolicy(AdviserOptions options) implements Policy {
    private static final Duration MEMORY = Duration.ofHours(24);

    @Override
    public Decision next(SkimmerUnit unit, Settings startSettings, Journal journal, Instant now) {
        Instant since = now.minus(MEMORY);
        double crestMm = startSettings.weirCrestMm();
        for (JournalEntry entry : journal.entries()) {
            if (entry instanceof WeirMove move && entry.at().isBefore(since)) {
                crestMm = move.toCrestMm();
            }
        }
        List<JournalEntry> late = journal.entries().stream()
                .filter(entry -> !entry.at().isBefore(since))
                .toList();
        return new AdviserPolicy(options).next(unit, startSettings.withWeirCrestMm(crestMm), new Journal(late), now);
    }
}
