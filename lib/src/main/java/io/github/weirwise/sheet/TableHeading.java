package io.github.weirwise.sheet;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.sheet.TableUnit.Kind;
import java.util.Arrays;
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
 * @param unit its unit; null for columns of words
 */
record TableHeading(String text, TableColumn column, TableUnit unit) {
    private static final Pattern BRACKETS = Pattern.compile("(.*?)\\s*[(\\[]([^)\\]]*)[)\\]]\\s*");
    private static final Pattern COMMA = Pattern.compile("([^,]*),(.*)");
    private static final int MOST_UNIT_WORDS = 3;

    /**
     * Takes a heading apart.
     *
     * @throws TableException if it names a column but its unit is missing or measures something else
     */
    static TableHeading of(String text, int column) {
        String heading = text.strip();
        for (Pattern form : new Pattern[] {BRACKETS, COMMA}) {
            Matcher matcher = form.matcher(heading);
            Optional<TableColumn> named = matcher.matches() ? TableColumn.of(matcher.group(1)) : Optional.empty();
            if (named.isPresent()) {
                return checked(text, column, named.get(), matcher.group(2).strip());
            }
        }
        Optional<TableColumn> whole = TableColumn.of(heading);
        return whole.isPresent() ? checked(text, column, whole.get(), "") : byLastWords(text, column, heading);
    }

    boolean isKnown() {
        return column != null;
    }

    private static TableHeading byLastWords(String text, int column, String heading) {
        String[] words = heading.replaceAll("(?<=[a-z])(?=[A-Z])", " ").split("[\\s_-]+");
        for (int i = Math.max(1, words.length - MOST_UNIT_WORDS); i < words.length; i++) {
            Optional<TableColumn> named = TableColumn.of(joined(words, 0, i));
            Optional<TableUnit> unit = TableUnit.of(joined(words, i, words.length));
            if (named.isPresent() && unit.isPresent()) {
                return checked(text, column, named.get(), joined(words, i, words.length));
            }
        }
        return new TableHeading(text, null, null);
    }

    private static String joined(String[] words, int from, int to) {
        return String.join(" ", Arrays.asList(words).subList(from, to));
    }

    private static TableHeading checked(String text, int column, TableColumn named, String unit) {
        boolean words = named.kind() == Kind.NONE;
        boolean gravity = text.toLowerCase(Locale.ROOT).contains("gravity");
        if (words || named == TableColumn.DARKNESS && unit.isEmpty()) {
            return new TableHeading(text, named, TableUnit.of("pt-co").orElseThrow());
        }
        if (named == TableColumn.SALINITY && unit.isEmpty() && !gravity) {
            return new TableHeading(text, named, TableUnit.of("psu").orElseThrow());
        }
        Optional<TableUnit> found = TableUnit.of(unit);
        if (found.isEmpty()) {
            throw fault(text, column, unit, named);
        }
        if (named == TableColumn.CUP && found.get().kind() == Kind.VOLUME_PER_DAY) {
            return new TableHeading(text, TableColumn.RATE, found.get());
        }
        if (found.get().kind() != named.kind()) {
            throw fault(text, column, unit, named);
        }
        return new TableHeading(text, named, found.get());
    }

    private static TableException fault(String text, int column, String unit, TableColumn named) {
        Phrase example = Phrase.of("sheet.table.units." + named.kind());
        Phrase what = unit.isEmpty()
                ? Phrase.of("sheet.table.noUnit", example)
                : Phrase.of("sheet.table.wrongUnit", unit, example);
        return new TableException(new TableFault(1, column, text, what));
    }
}
