package io.github.weirwise.sheet;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.sheet.TableCell.Unfit;
import java.time.Instant;
import java.util.ArrayList;
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
    private final Map<TableColumn, TableCell> cells = new EnumMap<>(TableColumn.class);
    private final Map<TableColumn, Integer> places = new EnumMap<>(TableColumn.class);
    private final List<TableFault> faults = new ArrayList<>();
    private final List<Observation> seen = new ArrayList<>();
    private Optional<Instant> at = Optional.empty();
    private OptionalDouble crestMm = OptionalDouble.empty();

    TableRow(CsvRows.Row row, List<TableHeading> headings, boolean decimalComma) {
        number = row.number();
        for (int i = 0; i < headings.size(); i++) {
            TableHeading heading = headings.get(i);
            if (heading.isKnown()) {
                cells.put(heading.column(), new TableCell(row.cell(i).strip(), heading, decimalComma));
                places.put(heading.column(), i + 1);
            }
        }
    }

    /** Reads all cells; {@link #faults} is empty afterwards if the row is sound. */
    void read(TableMoment moments) {
        moment(moments);
        take(TableColumn.LEVEL, () -> seen.add(new Observation.FunnelLevel(number(TableColumn.LEVEL))));
        take(TableColumn.CUP, this::cup);
        take(TableColumn.RATE, () -> seen.add(new Observation.CupVolume(number(TableColumn.RATE), 24, full())));
        take(TableColumn.DARKNESS, this::darkness);
        take(
                TableColumn.FOAM,
                () -> seen.add(new Observation.FoamLook(cell(TableColumn.FOAM).foam())));
        take(TableColumn.HEAD, () -> seen.add(new Observation.HeadOverCrest(number(TableColumn.HEAD))));
        take(TableColumn.OUTSIDE, () -> seen.add(new Observation.OutsideLevel(number(TableColumn.OUTSIDE))));
        take(TableColumn.BEYOND, () -> seen.add(new Observation.LevelBeyondWeir(number(TableColumn.BEYOND))));
        take(TableColumn.AIR, () -> seen.add(new Observation.AirFlow(number(TableColumn.AIR))));
        take(TableColumn.FLOW, () -> seen.add(new Observation.ReturnFlow(number(TableColumn.FLOW))));
        take(TableColumn.SALINITY, () -> seen.add(new Observation.Salinity(number(TableColumn.SALINITY))));
        take(
                TableColumn.TEMPERATURE,
                () -> seen.add(new Observation.WaterTemperature(number(TableColumn.TEMPERATURE))));
        take(TableColumn.COLLAPSE, () -> seen.add(new Observation.FoamCollapse(3600 * number(TableColumn.COLLAPSE))));
        take(TableColumn.WEIR, () -> crestMm = OptionalDouble.of(number(TableColumn.WEIR)));
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
            take(TableColumn.WEIR, () -> entries.add(new WeirMove(when, crestMm.getAsDouble(), false)));
        }
        if (!seen.isEmpty()) {
            entries.add(new Reading(when, words(TableColumn.BY), seen));
        }
        if (!words(TableColumn.NOTE).isEmpty()) {
            take(TableColumn.NOTE, () -> entries.add(note(when)));
        }
        return entries;
    }

    OptionalDouble crestMm() {
        return crestMm;
    }

    Optional<Instant> at() {
        return at;
    }

    private void moment(TableMoment moments) {
        String day = words(TableColumn.DAY);
        String time = words(TableColumn.TIME);
        TableColumn where = cells.containsKey(TableColumn.DAY) ? TableColumn.DAY : TableColumn.TIME;
        if (day.isEmpty() && time.isEmpty()) {
            fault(where, Phrase.of("sheet.table.noTime"));
            return;
        }
        boolean both = cells.containsKey(TableColumn.DAY) && cells.containsKey(TableColumn.TIME);
        at = both ? moments.read(day, time) : moments.read(day + time);
        if (at.isEmpty()) {
            fault(where, Phrase.of("sheet.table.badTime", cell(where).shown()));
        }
    }

    private void cup() throws Unfit {
        TableCell hours = cell(TableColumn.HOURS);
        if (hours == null || hours.isEmpty()) {
            throw new Unfit(Phrase.of("sheet.table.noHours"));
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

    private Note note(Instant when) throws Unfit {
        try {
            return new Note(when, words(TableColumn.NOTE));
        } catch (IllegalArgumentException e) {
            throw new Unfit(
                    Phrase.of("sheet.table.longNote", words(TableColumn.NOTE).length()));
        }
    }

    private void take(TableColumn column, Step step) {
        TableCell cell = cell(column);
        if (cell == null || cell.isEmpty()) {
            return;
        }
        try {
            step.take();
        } catch (OutOfRangeException e) {
            fault(column, TableCell.outOfRange(e));
        } catch (Unfit e) {
            fault(column, e.what());
        }
    }

    private void fault(TableColumn column, Phrase what) {
        TableCell cell = cell(column);
        int place = places.getOrDefault(column, 0);
        faults.add(
                new TableFault(number, place, cell == null ? "" : cell.heading().text(), what));
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
