package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;

/** A journal as a document of its own. */
record JournalDocument(Journal entries) {}
