package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import java.util.List;

/** A journal as a document of its own. */
record JournalDocument(List<JournalEntry> entries) {}
