package io.github.weirwise.sheet;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads a spreadsheet log that was saved as CSV: columns in any order, found by name and unit in the heading.
 *
 * <p>Cells are parted by comma, semicolon or tab, whichever makes most sense of the headings; quotes as in RFC 4180. A column
 * of lengths, volumes, flows or temperatures must say its unit ({@code level (mm)}, {@code flow gph}, {@code temp [F]}).
 * Needed is a time; all else may be missing, in the table or in a row. Numbers may have a decimal comma unless the comma
 * parts the cells. A weir column gives a move where its number changes, a note column gives notes.
 *
 * @param zone time zone of times without an offset
 * @since 0.1
 */
public record ReadingTable(ZoneId zone) {
    /** Longest table, characters. */
    public static final int MOST_CHARACTERS = 50_000_000;

    private static final char[] SEPARATORS = {',', ';', '\t'};

    /** Rejects null. */
    public ReadingTable {
        Objects.requireNonNull(zone, "zone");
    }

    /**
     * All of a table, or nothing.
     *
     * @throws TableException if anything is wrong, with every fault's row and column
     */
    public ImportedTable readAll(String csv) {
        ImportedTable table = readSound(csv);
        if (table.faultCount() > 0) {
            throw new TableException(table.faults(), table.faultCount());
        }
        return table;
    }

    /** The same from a file's bytes: UTF-8, or UTF-16 with a byte-order mark. */
    public ImportedTable readAll(byte[] file) {
        return readAll(decoded(file));
    }

    /**
     * The sound rows of a table; the others are told as faults.
     *
     * @throws TableException if the table as a whole cannot be read: no headings, no time column, quotes that do not close
     */
    public ImportedTable readSound(String csv) {
        String text = checked(csv);
        char separator = separator(text);
        List<CsvRows.Row> rows = new CsvRows(text, separator).read(CsvRows.MOST_ROWS + 1);
        List<TableHeading> headings = headings(rows);
        List<TableFault> faults = new ArrayList<>();
        List<TableRow> sound = new ArrayList<>();
        TableMoment moments = new TableMoment(zone);
        int filled = 0;
        for (CsvRows.Row row : rows.subList(1, rows.size())) {
            if (!row.isBlank()) {
                filled++;
                TableRow read = new TableRow(row, headings, separator != ',');
                read.read(moments);
                faults.addAll(read.faults());
                tooLong(row, headings).forEach(faults::add);
                if (read.faults().isEmpty() && row.cells().size() <= headings.size()) {
                    sound.add(read);
                }
            }
        }
        List<JournalEntry> entries = entries(sound, faults);
        List<String> ignored = headings.stream()
                .filter(heading -> !heading.isKnown() && !heading.text().isBlank())
                .map(TableHeading::text)
                .toList();
        faults.sort(Comparator.comparingInt(TableFault::row).thenComparingInt(TableFault::column));
        List<TableFault> listed = faults.subList(0, Math.min(TableException.MOST_LISTED, faults.size()));
        return new ImportedTable(new Journal(entries), filled, listed, faults.size(), ignored);
    }

    /** The same from a file's bytes: UTF-8, or UTF-16 with a byte-order mark. */
    public ImportedTable readSound(byte[] file) {
        return readSound(decoded(file));
    }

    /** In order of time, so that a weir move is told where the number really changed. */
    private static List<JournalEntry> entries(List<TableRow> sound, List<TableFault> faults) {
        List<JournalEntry> entries = new ArrayList<>();
        OptionalDouble crestMm = OptionalDouble.empty();
        for (TableRow row : sound.stream()
                .sorted(Comparator.comparing(each -> each.at().orElse(Instant.MIN)))
                .toList()) {
            List<JournalEntry> own = row.entries(crestMm);
            faults.addAll(row.faults());
            if (row.faults().isEmpty()) {
                entries.addAll(own);
                crestMm = row.crestMm().isPresent() ? row.crestMm() : crestMm;
            }
        }
        return entries;
    }

    private static List<TableFault> tooLong(CsvRows.Row row, List<TableHeading> headings) {
        boolean more = row.cells().size() > headings.size();
        Phrase what = Phrase.of("sheet.table.moreCells", row.cells().size(), headings.size());
        return more ? List.of(new TableFault(row.number(), 0, "", what)) : List.of();
    }

    private static List<TableHeading> headings(List<CsvRows.Row> rows) {
        if (rows.isEmpty() || rows.get(0).isBlank()) {
            throw whole(Phrase.of("sheet.table.noHeadings"));
        }
        List<TableHeading> headings = new ArrayList<>();
        Set<TableColumn> known = EnumSet.noneOf(TableColumn.class);
        for (int i = 0; i < rows.get(0).cells().size(); i++) {
            TableHeading heading = TableHeading.of(rows.get(0).cells().get(i), i + 1);
            if (heading.isKnown() && !known.add(heading.column())) {
                Phrase what = Phrase.of("sheet.table.twice", heading.column().shownName());
                throw new TableException(new TableFault(1, i + 1, heading.text(), what));
            }
            headings.add(heading);
        }
        if (!known.contains(TableColumn.TIME) && !known.contains(TableColumn.DAY)) {
            throw whole(Phrase.of("sheet.table.noTimeColumn"));
        }
        if (known.containsAll(EnumSet.of(TableColumn.CUP, TableColumn.RATE))) {
            throw whole(Phrase.of("sheet.table.cupAndRate"));
        }
        return headings;
    }

    /** The separator that makes most headings known; the comma when none does. */
    private static char separator(String text) {
        char best = SEPARATORS[0];
        long most = -1;
        for (char separator : SEPARATORS) {
            long known = knownHeadings(text, separator);
            if (known > most) {
                most = known;
                best = separator;
            }
        }
        return best;
    }

    private static long knownHeadings(String text, char separator) {
        try {
            List<CsvRows.Row> first = new CsvRows(text, separator).read(1);
            return first.isEmpty()
                    ? 0
                    : first.get(0).cells().stream()
                            .filter(ReadingTable::namesColumn)
                            .count();
        } catch (TableException e) {
            return 0;
        }
    }

    private static boolean namesColumn(String heading) {
        try {
            return TableHeading.of(heading, 1).isKnown();
        } catch (TableException e) {
            return true;
        }
    }

    private static String checked(String csv) {
        Objects.requireNonNull(csv, "csv");
        if (csv.length() > MOST_CHARACTERS) {
            throw whole(Phrase.of("sheet.table.tooLarge", csv.length(), MOST_CHARACTERS));
        }
        if (csv.indexOf('\0') >= 0) {
            throw whole(Phrase.of("sheet.table.notText"));
        }
        return csv.startsWith("\ufeff") ? csv.substring(1) : csv;
    }

    private static String decoded(byte[] file) {
        boolean bigEnd = file.length >= 2 && file[0] == (byte) 0xfe && file[1] == (byte) 0xff;
        boolean littleEnd = file.length >= 2 && file[0] == (byte) 0xff && file[1] == (byte) 0xfe;
        Charset charset = bigEnd || littleEnd ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
        try {
            return charset.newDecoder().decode(ByteBuffer.wrap(file)).toString();
        } catch (CharacterCodingException e) {
            throw whole(Phrase.of("sheet.table.notText"));
        }
    }

    private static TableException whole(Phrase what) {
        return new TableException(new TableFault(0, 0, "", what));
    }
}
