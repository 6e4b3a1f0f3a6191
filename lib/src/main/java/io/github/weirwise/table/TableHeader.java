package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The row of headings, wherever it stands: titles above it are passed over.
 *
 * @param separator what parts the cells
 * @param index the row's place among the rows, from 0
 * @param headings one for each column
 */
record TableHeader(char separator, int index, List<TableHeading> headings) {
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    /** Titles above the headings end before this row. */
    private static final int ROWS_SEARCHED = 20;

    private record Guess(char separator, int index, long known) {}

    /** Copies the list. */
    TableHeader {
        headings = List.copyOf(headings);
    }

    /** The separator that makes most headings of some row known; the comma when none does. */
    static char separator(String text) {
        Guess best = new Guess(SEPARATORS[0], 0, -1);
        for (char separator : SEPARATORS) {
            Guess guess = best(separator, firstRows(text, separator));
            best = guess.known() > best.known() ? guess : best;
        }
        return best.separator();
    }

    /**
     * Finds and checks the headings.
     *
     * @throws Unreadable if there are none, if none is for the time, or if one is not clear
     */
    static TableHeader of(List<CsvRows.Row> rows, char separator) {
        int index = best(separator, rows.subList(0, Math.min(ROWS_SEARCHED, rows.size())))
                .index();
        if (rows.isEmpty() || rows.get(index).isBlank()) {
            throw whole(Phrase.of("table.noHeadings"));
        }
        boolean units = index + 1 < rows.size() && holdsUnits(rows.get(index + 1));
        return new TableHeader(
                separator, units ? index + 1 : index, headings(rows.get(index), rows.subList(index + 1, rows.size())));
    }

    /** Whether a row below the headings holds units and nothing else. */
    private static boolean holdsUnits(CsvRows.Row row) {
        return !row.isBlank()
                && row.cells().stream()
                        .allMatch(cell ->
                                cell.isBlank() || TableUnit.of(bare(cell)).isPresent());
    }

    /** The unit in the first cell below a heading that is not empty: alone, or behind a number. */
    private static Optional<String> unitBelow(List<CsvRows.Row> below, int column) {
        return below.stream()
                .map(row -> row.cell(column).strip())
                .filter(cell -> !TableCell.isAbsent(cell))
                .findFirst()
                .map(cell -> WrittenNumber.of(cell).map(WrittenNumber::unit).orElse(bare(cell)))
                .filter(unit -> TableUnit.of(unit).isPresent());
    }

    private static String bare(String unit) {
        String cell = unit.strip();
        boolean bracketed = cell.length() > 2
                && "([".indexOf(cell.charAt(0)) >= 0
                && ")]".indexOf(cell.charAt(cell.length() - 1)) >= 0;
        return bracketed ? cell.substring(1, cell.length() - 1) : cell;
    }

    /** What a row says about the time: its day, its time of day, or both. */
    String moment(CsvRows.Row row) {
        return cell(row, TableColumn.DAY) + " " + cell(row, TableColumn.TIME);
    }

    /** The zone that the headings name, if they do: time (UTC). */
    Optional<ZoneId> zone() {
        boolean utc = times().anyMatch(said -> said.equals("utc") || said.equals("gmt"));
        return utc ? Optional.of(ZoneOffset.UTC) : Optional.empty();
    }

    /** The order of days that the headings name: date (dd/mm/yyyy). */
    DateOrder order() {
        return times().map(TableHeader::order)
                .filter(order -> order != DateOrder.UNSTATED)
                .findFirst()
                .orElse(DateOrder.UNSTATED);
    }

    private static DateOrder order(String said) {
        int day = said.indexOf('d');
        int month = said.indexOf('m');
        int year = said.indexOf('y');
        if (day < 0 || month < 0 || year >= 0 && year < Math.min(day, month)) {
            return DateOrder.UNSTATED;
        }
        return day < month ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
    }

    private Stream<String> times() {
        return headings.stream()
                .filter(heading -> heading.column() == TableColumn.DAY || heading.column() == TableColumn.TIME)
                .map(heading -> heading.said().toLowerCase(Locale.ROOT));
    }

    private String cell(CsvRows.Row row, TableColumn column) {
        for (int i = 0; i < headings.size(); i++) {
            if (headings.get(i).column() == column) {
                String cell = row.cell(i).strip();
                return TableCell.isAbsent(cell) ? "" : cell;
            }
        }
        return "";
    }

    private static List<TableHeading> headings(CsvRows.Row row, List<CsvRows.Row> rowsBelow) {
        List<TableHeading> headings = new ArrayList<>();
        Set<TableColumn> known = EnumSet.noneOf(TableColumn.class);
        for (int i = 0; i < row.cells().size(); i++) {
            int place = i;
            String name = row.cells().get(i);
            Optional<String> unit = TableColumn.of(name.strip())
                    .filter(column -> column.kind() != TableUnit.Kind.NONE)
                    .flatMap(column -> unitBelow(rowsBelow, place));
            TableHeading heading =
                    TableHeading.of(unit.map(below -> name + " (" + below + ")").orElse(name), row.number(), i + 1);
            boolean again = heading.isKnown() && !known.add(heading.column());
            if (again && heading.column() != TableColumn.NOTE) {
                Phrase what = Phrase.of("table.twice", heading.column().shownName());
                throw new Unreadable(new TableFault(row.number(), i + 1, heading.text(), what));
            }
            headings.add(heading);
        }
        if (!known.contains(TableColumn.TIME) && !known.contains(TableColumn.DAY)) {
            throw whole(Phrase.of("table.noTimeColumn"));
        }
        if (known.containsAll(EnumSet.of(TableColumn.CUP, TableColumn.RATE))) {
            throw whole(Phrase.of("table.cupAndRate"));
        }
        return headings;
    }

    private static Guess best(char separator, List<CsvRows.Row> rows) {
        Guess best = new Guess(separator, 0, -1);
        for (int i = 0; i < rows.size(); i++) {
            long known = rows.get(i).cells().stream()
                    .filter(TableHeader::namesColumn)
                    .count();
            boolean first = best.known() < 0 && !rows.get(i).isBlank();
            best = known > Math.max(0, best.known()) || first ? new Guess(separator, i, known) : best;
        }
        return best;
    }

    private static List<CsvRows.Row> firstRows(String text, char separator) {
        List<CsvRows.Row> rows = new ArrayList<>();
        try {
            new CsvRows(text, separator).read(ROWS_SEARCHED, rows);
        } catch (Unreadable toldWhenAllIsRead) {
            return rows;
        }
        return rows;
    }

    private static boolean namesColumn(String heading) {
        try {
            return TableHeading.of(heading, 1, 1).isKnown();
        } catch (Unreadable e) {
            return true;
        }
    }

    private static Unreadable whole(Phrase what) {
        return new Unreadable(new TableFault(0, 0, "", what));
    }
}
