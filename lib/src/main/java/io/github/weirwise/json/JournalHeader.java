package io.github.weirwise.json;

import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/** First line of a journal file: whose journal it is, and how the unit was set when it was begun. */
record JournalHeader(SkimmerUnit unit, Settings settings) {}
