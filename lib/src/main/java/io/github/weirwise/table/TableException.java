package io.github.weirwise.table;

import java.util.List;

/**
 * A table cannot be read as it is; the only exception that reading a table throws. Nothing was taken over.
 */
public final class TableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Faults beyond this many are counted but not listed. */
    static final int MOST_LISTED = 1000;

    private final transient List<TableFault> faults;
    private final int count;

    TableException(List<TableFault> faults, int count) {
        super(message(faults, count));
        this.faults = List.copyOf(faults);
        this.count = count;
    }

    TableException(TableFault fault) {
        this(List.of(fault), 1);
    }

    /** What is wrong, in the table's order; at most 1000. */
    public List<TableFault> faults() {
        return faults == null ? List.of() : faults;
    }

    /** Whether the table can be read once it is said whether days are written day or month first. */
    public boolean asksForDateOrder() {
        return faults().stream().anyMatch(TableFault::asksForDateOrder);
    }

    /** How many faults there are. */
    public int count() {
        return count;
    }

    private static String message(List<TableFault> faults, int count) {
        String first = faults.get(0).toString();
        return count == 1 ? first : first + " (and " + (count - 1) + " more)";
    }
}
