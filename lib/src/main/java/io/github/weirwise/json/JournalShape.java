package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * A journal as the array of its entries, in any order of time; written oldest first. Entries of the same identifier count once.
 */
final class JournalShape implements Shape<Journal> {
    private final Shape<List<JournalItem>> items;

    JournalShape(Shape<List<JournalItem>> items) {
        this.items = items;
    }

    @Override
    public Journal read(Place at) {
        return new Journal(JournalItem.once(items.read(at)));
    }

    @Override
    public JsonNode write(Journal journal) {
        return items.write(journal.entries().stream().map(JournalItem::of).toList());
    }
}
