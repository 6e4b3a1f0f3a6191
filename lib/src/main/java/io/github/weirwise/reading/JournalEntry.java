package io.github.weirwise.reading;

import java.time.Instant;

/**
 * One line of a unit's journal: something seen, done, serviced, that happened, was noted or advised.
 *
 * @since 0.1
 */
public sealed interface JournalEntry permits Reading, WeirMove, SettingChange, Service, Happening, Note, AdviceGiven {
    /** When. */
    Instant at();
}
