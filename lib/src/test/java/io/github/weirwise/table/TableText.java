package io.github.weirwise.table;

import java.util.ArrayList;
import java.util.List;

/** The cells of a table as a spreadsheet sees them, for tests of what other rooms write. */
public final class TableText {
    private TableText() {}

    /** Rows of cells, quotes taken off. */
    public static List<List<String>> cells(String csv, char separator) {
        List<CsvRows.Row> rows = new ArrayList<>();
        new CsvRows(csv, separator).read(CsvRows.MOST_ROWS, rows);
        return rows.stream().map(CsvRows.Row::cells).toList();
    }
}
