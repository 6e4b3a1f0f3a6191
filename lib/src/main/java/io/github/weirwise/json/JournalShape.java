package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** A journal as the array of its entries, in any order of time; written oldest first. */
final class JournalShape implements Shape<Journal> {
    private final Shape<List<JournalEntry>> entries;

    JournalShape(Shape<List<JournalEntry>> entries) {
        this.entries = entries;
    }

    @Override
    public Journal read(Place at) {
        return new Journal(entries.read(at));
    }

    @Override
    public JsonNode write(Journal journal) {
        return entries.write(journal.entries());
    }
}
