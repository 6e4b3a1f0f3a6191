package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** An entry of a journal, which may have a member {@code id} beside its own. */
final class ItemShape implements Shape<JournalItem> {
    private static final String ID = "id";

    private final Shape<JournalEntry> entry;
    private final TextShape text = new TextShape();

    ItemShape(Shape<JournalEntry> entry) {
        this.entry = entry;
    }

    @Override
    public JournalItem read(Place at) {
        Place id = at.asObject().take(ID);
        Optional<String> given = id.isMissing() ? Optional.empty() : Optional.of(text.read(id));
        JournalEntry read = entry.read(at);
        try {
            return new JournalItem(given, read);
        } catch (DocumentException e) {
            throw id.wrong(e.problemWords(), e.tryThisWords());
        }
    }

    @Override
    public JsonNode write(JournalItem item) {
        ObjectNode object = (ObjectNode) entry.write(item.entry());
        item.id().ifPresent(id -> object.put(ID, id));
        return object;
    }
}
