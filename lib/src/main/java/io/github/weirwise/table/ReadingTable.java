package io.github.weirwise.table;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Work;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Reads a log that a spreadsheet or a controller saved as CSV: columns in any order, found by name and unit in the heading.
 *
 * <p>Cells are parted by comma, semicolon or tab, whichever makes most sense of the headings; quotes as in RFC 4180. Titles
 * may stand above the headings. A column of lengths, volumes, flows or temperatures must say its unit ({@code level (mm)},
 * {@code flow gph}, {@code temp [F]}). Needed is a time; all else may be missing, in the table or in a row. Decimal mark and
 * order of day and month are told from the whole table, and asked for where it does not tell them. A weir column gives a move
 * where its number changes, note columns give notes.
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
        char separator = TableHeader.separator(text);
        List<CsvRows.Row> rows = new CsvRows(text, separator).read(CsvRows.MOST_ROWS + 1);
        TableHeader header = TableHeader.of(rows, separator);
        List<CsvRows.Row> filled = rows.subList(header.index() + 1, rows.size()).stream()
                .filter(row -> !row.isBlank())
                .toList();
        TableHabits habits = TableHabits.of(header, filled, dateOrder);
        TableMoment moments = new TableMoment(header.zone().orElse(zone), habits.order());
        FaultList faults = new FaultList();
        List<TableRow> sound = new ArrayList<>();
        for (CsvRows.Row row : filled) {
            Work.step();
            TableRow read = new TableRow(row, header, habits);
            read.read(moments);
            faults.addAll(read.faults());
            if (read.faults().isEmpty()) {
                sound.add(read);
            }
        }
        List<JournalEntry> entries = entries(sound, faults);
        List<String> ignored = header.headings().stream()
                .filter(heading -> !heading.isKnown() && !heading.text().isBlank())
                .map(TableHeading::text)
                .toList();
        return new ImportedTable(new Journal(entries), filled.size(), faults.sorted(), faults.count(), ignored);
    }

    /** In order of time, so that a weir move is told where the number really changed. */
    private static List<JournalEntry> entries(List<TableRow> sound, FaultList faults) {
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

    private static String checked(String csv) {
        Objects.requireNonNull(csv, "csv");
        if (csv.length() > MOST_CHARACTERS) {
            throw whole(Phrase.of("table.tooLarge", csv.length(), MOST_CHARACTERS));
        }
        if (csv.indexOf('\0') >= 0) {
            throw whole(Phrase.of("table.notText"));
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
            throw whole(Phrase.of("table.notText"));
        }
    }

    private static TableException whole(Phrase what) {
        return new TableException(new TableFault(0, 0, "", what));
    }
}
