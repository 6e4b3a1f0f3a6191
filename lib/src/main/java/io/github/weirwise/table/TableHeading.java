package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.table.TableUnit.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A heading of a table, taken apart into a column's name and a unit: {@code level (mm)}, {@code level [in]}, {@code level,
 * mm}, {@code level_mm}, {@code weirCrestMm}, {@code air litres per hour}.
 *
 * @param text the heading as it stands
 * @param column the column it names; null when it means nothing here
 * @param unit its unit; null for columns that mean nothing
 * @param said what stands in brackets or behind a comma
 */
record TableHeading(String text, TableColumn column, TableUnit unit, String said) {
    private static final int MOST_UNIT_WORDS = 3;
    private static final int LONGEST = 200;

    /**
     * Takes a heading apart.
     *
     * @param row the row as a spreadsheet counts it, for errors
     * @param place the column as a spreadsheet counts it, for errors
     * @throws Unreadable if it names a column but its unit is missing or measures something else
     */
    static TableHeading of(String text, int row, int place) {
        String heading = text.strip();
        if (heading.length() > LONGEST) {
            return new TableHeading(text, null, null, "");
        }
        Where where = new Where(text, row, place);
        for (int cut : new int[] {bracket(heading), heading.indexOf(',')}) {
            Optional<TableColumn> named = cut < 0 ? Optional.empty() : TableColumn.of(heading.substring(0, cut));
            if (named.isPresent()) {
                boolean bracketed = heading.charAt(cut) != ',';
                String said = heading.substring(cut + 1, heading.length() - (bracketed ? 1 : 0));
                return where.checked(named.get(), said.strip());
            }
        }
        Optional<TableColumn> whole = TableColumn.of(heading);
        return whole.isPresent() ? where.checked(whole.get(), "") : where.byLastWords(heading);
    }

    boolean isKnown() {
        return column != null;
    }

    /** Whether its numbers are specific gravities. */
    boolean isGravity() {
        return unit != null && unit.kind() == Kind.SALINITY && unit != PLAIN_SALINITY;
    }

    private static final TableUnit PLAIN_SALINITY = TableUnit.of("psu").orElseThrow();

    /** Where the brackets open that close at the end; -1 if none do. */
    private static int bracket(String heading) {
        int end = heading.length() - 1;
        if (end < 0 || heading.charAt(end) != ')' && heading.charAt(end) != ']') {
            return -1;
        }
        int closed = Math.max(heading.lastIndexOf(')', end - 1), heading.lastIndexOf(']', end - 1));
        for (int i = closed + 1; i < end; i++) {
            if (heading.charAt(i) == '(' || heading.charAt(i) == '[') {
                return i;
            }
        }
        return -1;
    }

    /**
     * A heading in its place.
     *
     * @param text as it stands
     * @param row the row as a spreadsheet counts it
     * @param place the column as a spreadsheet counts it
     */
    private record Where(String text, int row, int place) {
        TableHeading byLastWords(String heading) {
            List<String> words = words(heading);
            for (int i = Math.max(1, words.size() - MOST_UNIT_WORDS); i < words.size(); i++) {
                String unit = String.join(" ", words.subList(i, words.size()));
                Optional<TableColumn> named = TableColumn.of(String.join(" ", words.subList(0, i)));
                if (named.isPresent() && TableUnit.of(unit).isPresent()) {
                    return checked(named.get(), unit);
                }
            }
            return new TableHeading(text, null, null, "");
        }

        TableHeading checked(TableColumn named, String unit) {
            boolean words = named.kind() == Kind.NONE;
            boolean gravity = text.toLowerCase(Locale.ROOT).contains("gravity");
            if (words || named == TableColumn.DARKNESS && unit.isEmpty()) {
                return known(named, "pt-co", unit);
            }
            if (named == TableColumn.SALINITY && unit.isEmpty() && !gravity) {
                return known(named, "psu", "");
            }
            if (unit.isEmpty()
                    && TableUnit.of(text)
                            .filter(self -> self.kind() == named.kind())
                            .isPresent()) {
                return known(named, text, "");
            }
            Optional<TableUnit> found = TableUnit.of(unit);
            if (found.isPresent() && named == TableColumn.CUP && found.get().kind() == Kind.VOLUME_PER_DAY) {
                return known(TableColumn.RATE, unit, unit);
            }
            if (found.isEmpty() || found.get().kind() != named.kind()) {
                throw fault(unit, named);
            }
            return known(named, unit, unit);
        }

        private TableHeading known(TableColumn column, String unit, String said) {
            return new TableHeading(text, column, TableUnit.of(unit).orElseThrow(), said);
        }

        private Unreadable fault(String unit, TableColumn named) {
            Phrase example = Phrase.of("table.units." + named.kind());
            Phrase what =
                    unit.isEmpty() ? Phrase.of("table.noUnit", example) : Phrase.of("table.wrongUnit", unit, example);
            return new Unreadable(new TableFault(row, place, text, what));
        }

        /** Parted at blanks, strokes and where a capital follows a small letter. */
        private static List<String> words(String heading) {
            List<String> words = new ArrayList<>();
            StringBuilder word = new StringBuilder();
            char before = ' ';
            for (char c : heading.toCharArray()) {
                boolean gap = Character.isWhitespace(c) || c == '_' || c == '-';
                boolean capital = before >= 'a' && before <= 'z' && c >= 'A' && c <= 'Z';
                if ((gap || capital) && !word.isEmpty()) {
                    words.add(word.toString());
                    word.setLength(0);
                }
                if (!gap) {
                    word.append(c);
                }
                before = c;
            }
            words.add(word.toString());
            return words;
        }
    }
}
