package io.github.weirwise.table;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A way in which a table of readings comes damaged, and what should come of it.
 *
 * @param name what happened to it
 * @param outcome what reading it should say
 * @param harm does it: takes the cells, the header first, and the row to harm (0-based), gives the file's text
 */
public record TableDamage(String name, Outcome outcome, Harm harm) {
    /** What should come of it. */
    public enum Outcome {
        /** All rows are taken over. */
        HARMLESS,
        /** Only the harmed row is refused, by its number. */
        ROW,
        /** The whole table is refused. */
        TABLE
    }

    /** Does the harm. */
    public interface Harm {
        String apply(List<List<String>> cells, int row, Random random);
    }

    static final List<String> HEADER = List.of(
            "time",
            "by",
            "level (mm)",
            "cup (mL)",
            "hours (h)",
            "full",
            "colour",
            "foam",
            "flow (L/h)",
            "temp (C)",
            "salinity",
            "weir crest (mm)",
            "note");

    /** A sound table with a header and so many rows. */
    public static List<List<String>> sound(int rows, long seed) {
        Random random = new Random(seed);
        List<List<String>> cells = new ArrayList<>();
        cells.add(new ArrayList<>(HEADER));
        LocalDateTime at = LocalDateTime.of(2025, 1, 1, 8, 0);
        for (int i = 0; i < rows; i++) {
            at = at.plusMinutes(60 + random.nextInt(600));
            cells.add(new ArrayList<>(List.of(
                    at.toString().replace('T', ' '),
                    "trainee " + (1 + random.nextInt(4)),
                    decimal(22 + random.nextGaussian()),
                    decimal(50 + 400 * random.nextDouble()),
                    decimal(6 + 30 * random.nextDouble()),
                    random.nextInt(9) == 0 ? "yes" : "no",
                    random.nextBoolean() ? "dark tea" : decimal(800 + 900 * random.nextDouble()),
                    random.nextBoolean() ? "creamy" : "stiff",
                    decimal(2200 + 50 * random.nextGaussian()),
                    decimal(25 + 0.3 * random.nextGaussian()),
                    decimal(35 + 0.2 * random.nextGaussian()),
                    decimal(205 + random.nextInt(3)),
                    random.nextInt(5) == 0 ? "said \"wet\", then left; ok" : "")));
        }
        return cells;
    }

    /** The cells as CSV. */
    public static String csv(List<List<String>> cells, String separator, String end) {
        return cells.stream()
                .map(row -> row.stream().map(cell -> quoted(cell, separator)).collect(Collectors.joining(separator)))
                .collect(Collectors.joining(end, "", end));
    }

    /** Fifty of them. */
    public static List<TableDamage> all() {
        List<TableDamage> all = new ArrayList<>();
        all.addAll(cells());
        all.addAll(files());
        all.addAll(headings());
        return List.copyOf(all);
    }

    private static List<TableDamage> cells() {
        return List.of(
                cell("letters for a level", 2, "abc"),
                cell("a unit of another kind", 2, "22 C"),
                cell("two numbers in a cell", 2, "22 23"),
                cell("a level out of range", 2, "99999"),
                cell("a number that overflows", 2, "1e999"),
                cell("a not-a-number", 2, "NaN"),
                cell("an infinity", 8, "Infinity"),
                cell("a spreadsheet error", 8, "#DIV/0!"),
                cell("a lost reference", 3, "#REF!"),
                cell("a decimal comma between commas", 2, "22,5"),
                cell("blanks between any digits", 8, "2 20 0"),
                cell("digits of another script", 2, "\u0662\u0662"),
                cell("a minus of the wrong kind", 2, "\u221222"),
                cell("a negative amount", 3, "-20"),
                cell("no hours beside an amount", 4, ""),
                cell("hours of zero", 4, "0"),
                cell("full in an odd word", 5, "nearly"),
                cell("a colour that nobody knows", 6, "mauve"),
                cell("a foam that nobody knows", 7, "fluffy"),
                cell("Fahrenheit in a Celsius column", 9, "77"),
                cell("salinity as a gravity", 10, "fresh"),
                cell("a weir out of range", 11, "0"),
                cell("a note too long", 12, "x".repeat(2500)),
                cell("no time", 0, ""),
                cell("day before month", 0, "04/05/2026 08:00"),
                cell("a day that is none", 0, "2026-02-30 08:00"),
                cell("an hour that is none", 0, "2026-02-03 25:00"),
                cell("a year in the far past", 0, "0026-02-03 08:00"),
                cell("a serial number for a day", 0, "46081.33"),
                row("cells without a heading", row -> {
                    List<String> more = new ArrayList<>(row);
                    more.add("stray");
                    return more;
                }));
    }

    private static List<TableDamage> files() {
        return List.of(
                file("line ends of one kind", Outcome.HARMLESS, (cells, row, random) -> csv(cells, ",", "\r")),
                file("line ends of the other kind", Outcome.HARMLESS, (cells, row, random) -> csv(cells, ",", "\n")),
                file("semicolons", Outcome.HARMLESS, (cells, row, random) -> csv(cells, ";", "\r\n")),
                file("tabs", Outcome.HARMLESS, (cells, row, random) -> csv(cells, "\t", "\r\n")),
                file("a byte-order mark", Outcome.HARMLESS, (cells, row, random) -> "\ufeff" + plain(cells)),
                file("blank lines between", Outcome.HARMLESS, (cells, row, random) -> {
                    cells.add(row, List.of(""));
                    return plain(cells);
                }),
                file("rows in disorder", Outcome.HARMLESS, (cells, row, random) -> {
                    Collections.shuffle(cells.subList(1, cells.size()), random);
                    return plain(cells);
                }),
                file("a quote that never closes", Outcome.TABLE, (cells, row, random) -> {
                    String text = plain(cells);
                    return text + "2026-01-01 08:00,\"never closed" + "\r\n".repeat(3);
                }),
                file(
                        "text after a closing quote",
                        Outcome.TABLE,
                        (cells, row, random) -> plain(cells) + "\"2026-01-01\" 08:00\r\n"),
                file("a stray quote", Outcome.TABLE, (cells, row, random) -> plain(cells) + "2026-01-01 0\"8:00\r\n"),
                file(
                        "a NUL inside",
                        Outcome.TABLE,
                        (cells, row, random) -> plain(cells).replaceFirst("8", "\0")),
                file("nothing at all", Outcome.TABLE, (cells, row, random) -> ""),
                file(
                        "a cell without an end",
                        Outcome.TABLE,
                        (cells, row, random) -> plain(cells) + "z".repeat(CsvRows.LONGEST_CELL + 1)));
    }

    private static List<TableDamage> headings() {
        return List.of(
                heading("no unit over a length", 2, "level", Outcome.TABLE),
                heading("a unit of another kind above", 2, "level (L/h)", Outcome.TABLE),
                heading("two columns of one kind", 9, "level (cm)", Outcome.TABLE),
                heading("no time column", 0, "moment of truth", Outcome.TABLE),
                heading("an amount and a rate", 8, "skimmate (mL/day)", Outcome.TABLE),
                heading("a column that means nothing", 8, "nitrate (mg/L)", Outcome.HARMLESS),
                file("headings lost", Outcome.TABLE, (cells, row, random) -> plain(cells.subList(1, cells.size()))));
    }

    private static TableDamage cell(String name, int column, String text) {
        return row(name, row -> {
            row.set(column, text);
            if (column == 4) {
                row.set(3, "100");
            }
            return row;
        });
    }

    private static TableDamage row(String name, UnaryOperator<List<String>> change) {
        return new TableDamage(name, Outcome.ROW, (cells, row, random) -> {
            cells.set(row, change.apply(cells.get(row)));
            return plain(cells);
        });
    }

    private static TableDamage heading(String name, int column, String text, Outcome outcome) {
        return new TableDamage(name, outcome, (cells, row, random) -> {
            cells.get(0).set(column, text);
            return plain(cells);
        });
    }

    private static TableDamage file(String name, Outcome outcome, Harm harm) {
        return new TableDamage(name, outcome, harm);
    }

    private static String plain(List<List<String>> cells) {
        return csv(cells, ",", "\r\n");
    }

    private static String quoted(String cell, String separator) {
        boolean needed = cell.contains(separator) || cell.contains("\"") || cell.contains("\n");
        return needed ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
