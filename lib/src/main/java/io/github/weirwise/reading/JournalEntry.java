package io.github.weirwise.reading;

import io.github.weirwise.unit.Settings;
import java.time.Instant;

/**
 * One line of a unit's journal: something seen, done, serviced, that happened, was noted or advised.
 *
 * @since 0.1
 */
public sealed interface JournalEntry permits Reading, WeirMove, SettingChange, Service, Happening, Note, AdviceGiven {
    /** When. */
    Instant at();

    /** The settings as noted once this entry is made; those before it unless the entry changes a setting. */
    default Settings settingsAfter(Settings before) {
        return before;
    }
}
