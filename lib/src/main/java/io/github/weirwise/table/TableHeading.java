package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.table.TableUnit.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    private static final Pattern BRACKETED = Pattern.compile("([^(\\[]*+)[(\\[]([^()\\[\\]]*+)[)\\]]");
    /** Blanks, strokes, and where a capital follows a small letter. */
    private static final Pattern GAPS = Pattern.compile("[\\s_-]++|(?<=[a-z])(?=[A-Z])");

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
        return ways(heading).stream()
                .filter(way -> TableColumn.of(way.name()).isPresent())
                .findFirst()
                .map(way -> where.checked(
                        TableColumn.of(way.name()).orElseThrow(), way.said().strip()))
                .orElse(new TableHeading(text, null, null, ""));
    }

    /** A name and what is said behind it. */
    private record Way(String name, String said) {}

    /** Ways to read a heading, the plainest first: by its brackets, its comma, as a whole, by a unit in its last words. */
    private static List<Way> ways(String heading) {
        List<Way> ways = new ArrayList<>();
        Matcher bracketed = BRACKETED.matcher(heading);
        if (bracketed.matches()) {
            ways.add(new Way(bracketed.group(1), bracketed.group(2)));
        }
        int comma = heading.indexOf(',');
        if (comma >= 0) {
            ways.add(new Way(heading.substring(0, comma), heading.substring(comma + 1)));
        }
        ways.add(new Way(heading, ""));
        List<String> words = List.of(GAPS.split(heading));
        for (int i = Math.max(1, words.size() - MOST_UNIT_WORDS); i < words.size(); i++) {
            String unit = String.join(" ", words.subList(i, words.size()));
            if (TableUnit.of(unit).isPresent()) {
                ways.add(new Way(String.join(" ", words.subList(0, i)), unit));
            }
        }
        return ways;
    }

    boolean isKnown() {
        return column != null;
    }

    /** Whether its numbers are specific gravities. */
    boolean isGravity() {
        return unit != null && unit.kind() == Kind.SALINITY && unit != PLAIN_SALINITY;
    }

    private static final TableUnit PLAIN_SALINITY = TableUnit.of("psu").orElseThrow();

    /**
     * A heading in its place.
     *
     * @param text as it stands
     * @param row the row as a spreadsheet counts it
     * @param place the column as a spreadsheet counts it
     */
    private record Where(String text, int row, int place) {
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
    }
}
