package io.github.weirwise.table;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns the cells of one row into journal entries, or says what is wrong with them. */
final class TableRow {
    /** What one cell gives. */
    private interface Step {
        void take() throws Unfit;
    }

    private final int number;
    private final String moment;
    private final List<TableCell> notes = new ArrayList<>();
    private final Map<TableColumn, TableCell> cells = new EnumMap<>(TableColumn.class);
    private final List<TableFault> faults = new ArrayList<>();
    private final List<Observation> seen = new ArrayList<>();
    private final List<Note> remarks = new ArrayList<>();
    private Optional<Instant> at = Optional.empty();
    private OptionalDouble crestMm = OptionalDouble.empty();

    TableRow(CsvRows.Row row, TableHeader header, TableHabits habits) {
        number = row.number();
        moment = header.moment(row);
        List<TableHeading> headings = header.headings();
        for (int i = 0; i < headings.size(); i++) {
            TableHeading heading = headings.get(i);
            String text = row.cell(i).strip();
            TableCell cell = new TableCell(TableCell.isAbsent(text) ? "" : text, i + 1, heading, habits);
            if (heading.column() == TableColumn.NOTE) {
                notes.add(cell);
            } else if (heading.isKnown()) {
                cells.put(heading.column(), cell);
            }
        }
        if (row.filled() > headings.size()) {
            Phrase what = Phrase.of("table.moreCells", row.filled(), headings.size());
            faults.add(new TableFault(number, 0, "", what));
        }
    }

    /** Reads all cells; {@link #faults} is empty afterwards if the row is sound. */
    void read(TableMoment moments) {
        moment(moments);
        for (TableColumn column : TableColumn.values()) {
            column.seen().ifPresent(made -> take(column, () -> seen.add(made.apply(number(column)))));
        }
        take(TableColumn.CUP, this::cup);
        take(TableColumn.RATE, () -> seen.add(new Observation.CupVolume(number(TableColumn.RATE), 24, full())));
        take(TableColumn.DARKNESS, this::darkness);
        take(
                TableColumn.FOAM,
                () -> seen.add(new Observation.FoamLook(cell(TableColumn.FOAM).foam())));
        take(
                TableColumn.WEIR,
                () -> crestMm =
                        OptionalDouble.of(new WeirMove(Instant.EPOCH, number(TableColumn.WEIR), false).toCrestMm()));
        notes.forEach(cell -> take(cell, () -> remarks.add(note(at.orElse(Instant.EPOCH), cell))));
        faults.sort(Comparator.comparingInt(TableFault::column));
    }

    List<TableFault> faults() {
        return faults;
    }

    /**
     * The entries of a sound row.
     *
     * @param crestBefore where the weir stood in the row before; a move is told only when it changed
     */
    List<JournalEntry> entries(OptionalDouble crestBefore) {
        List<JournalEntry> entries = new ArrayList<>();
        Instant when = at.orElseThrow();
        boolean moved = crestMm.isPresent()
                && (crestBefore.isEmpty() || Math.abs(crestBefore.getAsDouble() - crestMm.getAsDouble()) > 0.05);
        if (moved) {
            entries.add(new WeirMove(when, crestMm.getAsDouble(), false));
        }
        if (!seen.isEmpty()) {
            entries.add(new Reading(when, words(TableColumn.BY), seen));
        }
        entries.addAll(remarks);
        return entries;
    }

    OptionalDouble crestMm() {
        return crestMm;
    }

    Optional<Instant> at() {
        return at;
    }

    private void moment(TableMoment moments) {
        TableColumn where = cells.containsKey(TableColumn.DAY) ? TableColumn.DAY : TableColumn.TIME;
        try {
            if (moment.isBlank()) {
                throw new Unfit(Phrase.of("table.noTime"));
            }
            at = Optional.of(moments.read(moment, TableCell.shown(moment.strip())));
        } catch (Unfit e) {
            fault(cell(where), e.what());
        }
    }

    private void cup() throws Unfit {
        TableCell hours = cell(TableColumn.HOURS);
        if (hours == null || hours.isEmpty()) {
            throw new Unfit(Phrase.of("table.noHours"));
        }
        Observation.CupVolume amount = new Observation.CupVolume(number(TableColumn.CUP), 1, full());
        take(TableColumn.HOURS, () -> seen.add(new Observation.CupVolume(amount.ml(), hours.number(), amount.full())));
    }

    private void darkness() throws Unfit {
        TableCell cell = cell(TableColumn.DARKNESS);
        Optional<Observation> word = cell.darkness().map(Observation.Darkness::new);
        seen.add(word.isPresent() ? word.get() : new Observation.DarknessMatch(cell.numberOr(DarknessWord.values())));
    }

    /** False when the cell says nothing; what is wrong with it is told there. */
    private boolean full() {
        TableCell full = cell(TableColumn.FULL);
        boolean[] yes = {false};
        take(TableColumn.FULL, () -> yes[0] = full.yes());
        return yes[0];
    }

    private static Note note(Instant when, TableCell cell) throws Unfit {
        try {
            return new Note(when, cell.text());
        } catch (IllegalArgumentException e) {
            throw new Unfit(Phrase.of("table.longNote", cell.text().length()));
        }
    }

    private void take(TableColumn column, Step step) {
        take(cell(column), step);
    }

    private void take(TableCell cell, Step step) {
        if (cell == null || cell.isEmpty()) {
            return;
        }
        try {
            step.take();
        } catch (OutOfRangeException e) {
            fault(cell, TableCell.outOfRange(e));
        } catch (Unfit e) {
            fault(cell, e.what());
        }
    }

    private void fault(TableCell cell, Phrase what) {
        faults.add(new TableFault(number, cell.place(), cell.heading().text(), what));
    }

    private TableCell cell(TableColumn column) {
        return cells.get(column);
    }

    private double number(TableColumn column) throws Unfit {
        return cell(column).number();
    }

    private String words(TableColumn column) {
        TableCell cell = cell(column);
        return cell == null ? "" : cell.text();
    }
}
