package io.github.weirwise.reading;

import io.github.weirwise.unit.Settings;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one unit over time, oldest first. Immutable; adding gives a new journal.
 *
 * @param entries entries in order of time; entries of the same instant keep their given order
 * @since 0.1
 */
public record Journal(List<JournalEntry> entries) {
    /** A journal without entries. */
    public static final Journal EMPTY = new Journal(List.of());

    /** Sorts by time, keeping the given order within an instant. */
    public Journal {
        List<JournalEntry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparing(JournalEntry::at));
        entries = List.copyOf(sorted);
    }

    /** A journal of the given entries. */
    public static Journal of(JournalEntry... entries) {
        return new Journal(List.of(entries));
    }

    /** This journal with one more entry. */
    public Journal with(JournalEntry entry) {
        List<JournalEntry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Journal(more);
    }

    /** All entries of a kind, oldest first. */
    public <T extends JournalEntry> List<T> all(Class<T> kind) {
        return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The newest entry of a kind, if there is one. */
    public <T extends JournalEntry> Optional<T> last(Class<T> kind) {
        List<T> found = all(kind);
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
    }

    /**
     * The settings as noted after the last entry.
     *
     * @param start settings before the first entry
     */
    public Settings settingsAfter(Settings start) {
        Settings settings = start;
        for (JournalEntry entry : entries) {
            settings = entry.settingsAfter(settings);
        }
        return settings;
    }

    /** The entries up to and including an instant. */
    public Journal until(Instant instant) {
        return new Journal(
                entries.stream().filter(entry -> !entry.at().isAfter(instant)).toList());
    }
}
