package io.github.weirwise.table;

import io.github.weirwise.reading.Journal;
import java.util.List;
import java.util.Objects;

/**
 * What was taken over from a table.
 *
 * @param journal readings, weir moves and notes of the rows without a fault
 * @param rows rows with something in them, without the header
 * @param faults what was wrong in the rows that were left out, at most 1000
 * @param faultCount how many faults there were
 * @param ignoredHeadings headings of columns that mean nothing here
 */
public record ImportedTable(
        Journal journal, int rows, List<TableFault> faults, int faultCount, List<String> ignoredHeadings) {
    /** Copies the lists. */
    public ImportedTable {
        Objects.requireNonNull(journal, "journal");
        faults = List.copyOf(faults);
        ignoredHeadings = List.copyOf(ignoredHeadings);
    }

    /** Whether rows were left out because it is not said whether days are written day or month first. */
    public boolean asksForDateOrder() {
        return faults.stream().anyMatch(TableFault::asksForDateOrder);
    }
}
