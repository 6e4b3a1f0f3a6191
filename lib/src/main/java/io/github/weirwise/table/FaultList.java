package io.github.weirwise.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Faults of a table: all are counted, the first thousand are kept. */
final class FaultList {
    private final List<TableFault> kept = new ArrayList<>();
    private int count;

    void add(TableFault fault) {
        count++;
        if (kept.size() < TableException.MOST_LISTED) {
            kept.add(fault);
        }
    }

    void addAll(List<TableFault> faults) {
        faults.forEach(this::add);
    }

    int count() {
        return count;
    }

    /** In the table's order. */
    List<TableFault> sorted() {
        kept.sort(Comparator.comparingInt(TableFault::row).thenComparingInt(TableFault::column));
        return List.copyOf(kept);
    }
}
