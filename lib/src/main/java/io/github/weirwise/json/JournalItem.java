package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * An entry with the identifier that its sender gave it.
 *
 * @param id 1 to 100 characters; empty for most entries
 * @param entry the entry
 */
record JournalItem(Optional<String> id, JournalEntry entry) {
    static final int LONGEST_ID = 100;

    /** Rejects nulls, and identifiers that are blank or too long. */
    JournalItem {
        Objects.requireNonNull(entry, "entry");
        if (id.isPresent() && (id.get().isBlank() || id.get().length() > LONGEST_ID)) {
            throw new DocumentException(
                    "$.id",
                    Phrase.of("json.characters", id.get().length(), LONGEST_ID),
                    Phrase.of("json.leaveOutGive"));
        }
    }

    /** An entry's own shape, which may have a member {@code id} beside its own. */
    static Shape<JournalItem> shape(Shape<JournalEntry> entry) {
        return Shape.of(at -> read(entry, at), item -> {
            ObjectNode object = (ObjectNode) entry.write(item.entry());
            item.id().ifPresent(id -> object.put("id", id));
            return object;
        });
    }

    private static JournalItem read(Shape<JournalEntry> entry, Place at) {
        Place id = at.asObject().take("id");
        Optional<String> given = id.isMissing() ? Optional.empty() : Optional.of(Plain.TEXT.read(id));
        JournalEntry read = entry.read(at);
        try {
            return new JournalItem(given, read);
        } catch (DocumentException e) {
            throw id.wrong(e.problemWords(), e.tryThisWords());
        }
    }

    static JournalItem of(JournalEntry entry) {
        return new JournalItem(Optional.empty(), entry);
    }

    /** The entries, each identifier once: what was sent again replaces what was sent before. */
    static List<JournalEntry> once(List<JournalItem> items) {
        List<JournalEntry> entries = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        for (JournalItem item : items) {
            Integer before =
                    item.id().map(id -> places.putIfAbsent(id, entries.size())).orElse(null);
            if (before == null) {
                entries.add(item.entry());
            } else {
                entries.set(before, item.entry());
            }
        }
        return entries;
    }
}
