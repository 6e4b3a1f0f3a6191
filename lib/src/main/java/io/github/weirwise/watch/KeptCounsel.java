package io.github.weirwise.watch;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.KeptState;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;

/**
 * The adviser asked again and again with a journal that grows. The answers are those from the whole journal, to the letter; the work is that of
 * the new entries.
 */
final class KeptCounsel implements Counsel {
    private final Adviser adviser;
    private final KeptState nothing;
    private List<JournalEntry> settled = List.of();
    private KeptState state;

    KeptCounsel(SkimmerUnit unit, Settings start, AdviserOptions options) {
        adviser = new Adviser(options);
        nothing = KeptState.of(unit, start, Journal.EMPTY);
        state = nothing;
    }

    @Override
    public Advice advise(Journal journal, Instant now) {
        List<JournalEntry> entries = journal.until(now).entries();
        boolean grew = entries.size() >= settled.size()
                && entries.subList(0, settled.size()).equals(settled);
        if (!grew) {
            settled = List.of();
            state = nothing;
        }
        // More may still come at the newest instant, so its entries are taken in for this answer only.
        Instant newest =
                entries.isEmpty() ? now : entries.get(entries.size() - 1).at();
        List<JournalEntry> older = entries.stream()
                .skip(settled.size())
                .filter(each -> each.at().isBefore(newest))
                .toList();
        state = state.extended(older);
        settled = entries.subList(0, settled.size() + older.size());
        return adviser.advise(state.extended(entries.subList(settled.size(), entries.size())), now);
    }
}
