package io.github.weirwise.table;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Work;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Reads a log that a spreadsheet or a controller saved as CSV: columns in any order, found by name and unit in the heading.
 *
 * <p>Cells are parted by comma, semicolon, tab or upright stroke, whichever makes most sense of the headings; quotes as in RFC 4180.
 * Titles may stand above the headings. A column of lengths, volumes, flows or temperatures must say its unit, in the heading ({@code level
 * (mm)}, {@code flow gph}, {@code temp [F]}) or in its cells. Needed is a time; all else may be missing, in the table or in a row.
 * Decimal mark and order of day and month are told from the whole table, and asked for where it does not tell them. A weir column gives a
 * move where its number changes, note columns give notes.
 *
 * @param zone time zone of times without an offset
 * @param dateOrder how days such as 5/1/2026 are meant, if that is known
 */
public record ReadingTable(ZoneId zone, DateOrder dateOrder) {
    /** Longest table, characters. */
    public static final int MOST_CHARACTERS = 50_000_000;

    /** Rejects null. */
    public ReadingTable {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(dateOrder, "dateOrder");
    }

    /** Asks for the order of day and month where the table does not tell it. */
    public ReadingTable(ZoneId zone) {
        this(zone, DateOrder.UNSTATED);
    }

    /** The sound rows of a table, and what is wrong with the others, or with all of it: no headings, no time, a quote that does not close. */
    public ImportedTable read(String csv) {
        try {
            return rows(checked(csv));
        } catch (Unreadable e) {
            return new ImportedTable(Journal.EMPTY, 0, List.of(e.fault()), 1, List.of());
        }
    }

    private ImportedTable rows(String text) {
        char separator = TableHeader.separator(text);
        List<CsvRows.Row> rows = new ArrayList<>();
        new CsvRows(text, separator).read(CsvRows.MOST_ROWS + 1, rows);
        TableHeader header = TableHeader.of(rows, separator);
        List<CsvRows.Row> filled = rows.subList(header.index() + 1, rows.size()).stream()
                .filter(row -> !row.isBlank())
                .toList();
        TableHabits habits = TableHabits.of(header, filled, dateOrder);
        TableMoment moments = new TableMoment(header.zone().orElse(zone), habits.order());
        List<TableFault> faults = new ArrayList<>();
        int faultCount = 0;
        List<TableRow> sound = new ArrayList<>();
        for (CsvRows.Row row : filled) {
            Work.step();
            TableRow read = new TableRow(row, header, habits);
            read.read(moments);
            read.faults().stream()
                    .limit(ImportedTable.MOST_LISTED - faults.size())
                    .forEach(faults::add);
            faultCount += read.faults().size();
            if (read.faults().isEmpty()) {
                sound.add(read);
            }
        }
        List<String> ignored = header.headings().stream()
                .filter(heading -> !heading.isKnown() && !heading.text().isBlank())
                .map(TableHeading::text)
                .toList();
        return new ImportedTable(new Journal(entries(sound)), filled.size(), faults, faultCount, ignored);
    }

    /** In order of time, so that a weir move is told where the number really changed. */
    private static List<JournalEntry> entries(List<TableRow> sound) {
        List<JournalEntry> entries = new ArrayList<>();
        OptionalDouble crestMm = OptionalDouble.empty();
        sound.sort(Comparator.comparing(each -> each.at().orElseThrow()));
        for (TableRow row : sound) {
            entries.addAll(row.entries(crestMm));
            crestMm = row.crestMm().isPresent() ? row.crestMm() : crestMm;
        }
        return entries;
    }

    /** Without a byte-order mark, and with plain blanks for those that do not break. */
    private static String checked(String csv) {
        Objects.requireNonNull(csv, "csv");
        if (csv.length() > MOST_CHARACTERS) {
            throw whole(Phrase.of("table.tooLarge", csv.length(), MOST_CHARACTERS));
        }
        if (csv.indexOf('\0') >= 0) {
            throw whole(Phrase.of("table.notText"));
        }
        String marked = csv.startsWith("\ufeff") ? csv.substring(1) : csv;
        return marked.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private static Unreadable whole(Phrase what) {
        return new Unreadable(new TableFault(0, 0, "", what));
    }
}
