package io.github.weirwise.table;

import io.github.weirwise.reading.Journal;
import java.util.List;
import java.util.Objects;

/**
 * What was found in a table.
 *
 * @param journal readings, weir moves and notes of the rows without a fault
 * @param rows rows with something in them, without the header
 * @param faults what was wrong, at most 1000, in the table's order
 * @param faultCount how many faults there were
 * @param ignoredHeadings headings of columns that mean nothing here
 */
public record ImportedTable(
        Journal journal, int rows, List<TableFault> faults, int faultCount, List<String> ignoredHeadings) {
    /** Faults beyond this many are counted but not listed. */
    static final int MOST_LISTED = 1000;

    /** Copies the lists. */
    public ImportedTable {
        Objects.requireNonNull(journal, "journal");
        faults = List.copyOf(faults);
        ignoredHeadings = List.copyOf(ignoredHeadings);
    }

    /** The same, with nothing taken over while there is a fault. */
    public ImportedTable orNothing() {
        return faultCount == 0 ? this : new ImportedTable(Journal.EMPTY, rows, faults, faultCount, ignoredHeadings);
    }

    /** Whether rows were left out because it is not said whether days are written day or month first. */
    public boolean asksForDateOrder() {
        return faults.stream().anyMatch(TableFault::asksForDateOrder);
    }
}
