package io.github.weirwise.sheet;

import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Phrase;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a unit's history.
 *
 * @param at when
 * @param words what was done or happened
 */
record HistoryLine(Instant at, Phrase words) {

    /**
     * A journal without its readings, oldest first: services of one day share a line, and of an advice that was written
     * again the later line counts.
     */
    static List<HistoryLine> of(Journal journal, ZoneId zone) {
        List<JournalEntry> told = told(journal.entries());
        List<HistoryLine> lines = new ArrayList<>();
        for (int i = 0; i < told.size(); ) {
            List<Service> together = sameDay(told, i, zone);
            JournalEntry entry = told.get(i);
            lines.add(new HistoryLine(
                    entry.at(), together.isEmpty() ? EntryWords.of(entry) : EntryWords.services(together)));
            i += Math.max(1, together.size());
        }
        return lines;
    }

    private static List<JournalEntry> told(List<JournalEntry> entries) {
        List<JournalEntry> told = new ArrayList<>();
        for (JournalEntry entry : entries) {
            if (entry instanceof AdviceGiven advice) {
                told.removeIf(before -> before instanceof AdviceGiven same
                        && same.at().equals(advice.at())
                        && same.step().equals(advice.step()));
            }
            if (!(entry instanceof Reading)) {
                told.add(entry);
            }
        }
        return told;
    }

    /** The services that follow each other from a place on, all of one day. */
    private static List<Service> sameDay(List<JournalEntry> told, int from, ZoneId zone) {
        List<Service> together = new ArrayList<>();
        LocalDate day = told.get(from).at().atZone(zone).toLocalDate();
        for (int i = from; i < told.size() && told.get(i) instanceof Service service; i++) {
            if (!service.at().atZone(zone).toLocalDate().equals(day)) {
                break;
            }
            together.add(service);
        }
        return together;
    }
}
