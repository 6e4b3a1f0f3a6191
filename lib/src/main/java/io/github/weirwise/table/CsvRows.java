package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits text into rows and cells by RFC 4180, with any of CR, LF and CR LF as line end and a separator that is given.
 *
 * @param text the whole table
 * @param separator between two cells
 */
record CsvRows(String text, char separator) {
    static final int MOST_ROWS = 1_000_000;
    static final int MOST_COLUMNS = 256;
    static final int LONGEST_CELL = 10_000;

    /**
     * One row.
     *
     * @param number the row as a spreadsheet counts it; a quoted line end does not begin a new one
     * @param cells its cells, without quotes
     */
    record Row(int number, List<String> cells) {
        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }

        /** How many cells there are up to the last that is not blank. */
        int filled() {
            int filled = cells.size();
            while (filled > 0 && cells.get(filled - 1).isBlank()) {
                filled--;
            }
            return filled;
        }

        /** A cell, empty when the row is too short. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /**
     * Adds rows to some, until there are as many as asked for.
     *
     * @throws Unreadable at the first quote that does not close or stands where it must not, or beyond the limits
     */
    void read(int most, List<Row> rows) {
        int at = 0;
        while (at < text.length() && rows.size() < most) {
            at = readRow(at, rows);
        }
    }

    private int readRow(int from, List<Row> rows) {
        int number = rows.size() + 1;
        if (number > MOST_ROWS) {
            throw fault(number, 0, Phrase.of("table.tooManyRows", MOST_ROWS));
        }
        List<String> cells = new ArrayList<>();
        int at = from;
        while (true) {
            at = readCell(at, number, cells);
            if (at >= text.length() || text.charAt(at) != separator) {
                break;
            }
            at++;
        }
        rows.add(new Row(number, cells));
        return afterLineEnd(at);
    }

    private int readCell(int from, int row, List<String> cells) {
        int column = cells.size() + 1;
        if (column > MOST_COLUMNS) {
            throw fault(row, column, Phrase.of("table.tooManyColumns", MOST_COLUMNS));
        }
        StringBuilder cell = new StringBuilder();
        boolean quoted = from < text.length() && text.charAt(from) == '"';
        int at = quoted ? readQuoted(from + 1, row, column, cell) : readPlain(from, row, column, cell);
        if (cell.length() > LONGEST_CELL) {
            throw fault(row, column, Phrase.of("table.tooLong", cell.length(), LONGEST_CELL));
        }
        cells.add(cell.toString());
        return at;
    }

    private int readPlain(int from, int row, int column, StringBuilder cell) {
        int at = from;
        for (; at < text.length() && !endsCell(text.charAt(at)); at++) {
            if (text.charAt(at) == '"') {
                throw fault(row, column, Phrase.of("table.strayQuote"));
            }
            cell.append(text.charAt(at));
        }
        return at;
    }

    private int readQuoted(int from, int row, int column, StringBuilder cell) {
        for (int at = from; at < text.length(); at++) {
            char c = text.charAt(at);
            boolean doubled = c == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"';
            if (doubled) {
                at++;
            } else if (c == '"') {
                if (at + 1 < text.length() && !endsCell(text.charAt(at + 1))) {
                    throw fault(row, column, Phrase.of("table.afterQuote"));
                }
                return at + 1;
            }
            cell.append(c);
        }
        throw fault(row, column, Phrase.of("table.openQuote"));
    }

    private boolean endsCell(char c) {
        return c == separator || c == '\n' || c == '\r';
    }

    private int afterLineEnd(int at) {
        boolean both = at + 1 < text.length() && text.charAt(at) == '\r' && text.charAt(at + 1) == '\n';
        return both ? at + 2 : at + 1;
    }

    private static Unreadable fault(int row, int column, Phrase what) {
        return new Unreadable(new TableFault(row, column, "", what));
    }
}
