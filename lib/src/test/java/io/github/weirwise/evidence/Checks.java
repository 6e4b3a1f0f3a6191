package io.github.weirwise.evidence;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Command {@code checks}: writes docs/reference/checks.md from the check values and says how many were met. */
final class Checks {
    private static final int MOST_PER_FORMULA = 20;

    /**
     * What the last line says.
     *
     * @param rows read or recalled rows, at most 20 a formula
     * @param computed rows computed elsewhere, which show only that a formula is coded right
     * @param sources published sources of the counted rows
     * @param failed rows of any kind that are not met
     * @param recalled those of the counted rows that are from memory
     */
    record Tally(int rows, int computed, int sources, int failed, int recalled) {}

    private Checks() {}

    static void run() throws IOException {
        Formulas formulas = Formulas.all();
        Tally tally = tally(CheckRows.all(), formulas);
        Path page = Path.of("docs", "reference", "checks.md");
        Files.createDirectories(page.getParent());
        Files.writeString(page, page(formulas, tally));
        System.out.println("wrote " + page);
        for (CheckRow row : CheckRows.all()) {
            if (!row.isMetBy(formulas.ours(row))) {
                System.out.println("not met: " + row.id() + " " + row.quantity() + ", " + row.source());
            }
        }
        System.out.printf(
                Locale.ROOT,
                "result: rows=%d computed=%d sources=%d failed=%d recalled=%d%n",
                tally.rows(),
                tally.computed(),
                tally.sources(),
                tally.failed(),
                tally.recalled());
    }

    static Tally tally(List<CheckRow> all, Formulas formulas) {
        Map<String, Integer> perFormula = new HashMap<>();
        Set<String> sources = new HashSet<>();
        int rows = 0;
        int computed = 0;
        int failed = 0;
        int recalled = 0;
        for (CheckRow row : all) {
            failed += row.isMetBy(formulas.ours(row)) ? 0 : 1;
            if (row.isComputed()) {
                computed++;
            } else if (perFormula.merge(formulas.of(row).name(), 1, Integer::sum) <= MOST_PER_FORMULA) {
                rows++;
                sources.add(row.source());
                recalled += row.isRecalled() ? 1 : 0;
            }
        }
        return new Tally(rows, computed, sources.size(), failed, recalled);
    }

    private static String page(Formulas formulas, Tally tally) {
        String head = """
                # Checks

                Written by the command `checks` (see [commands.md](../commands.md)) from the data files under
                `lib/src/test/resources/io/github/weirwise/checks`; the tests run the same rows.

                - %d rows are read or from memory (at most %d a formula), over %d published sources; %d of them are from memory.
                - %d rows are computed elsewhere. They show that a formula is coded right, not that it is the right formula.
                - %d rows are not met.

                **read** means that the number was read in the source or in a named copy of it; **from memory** that it was
                recalled and not looked up, so doubt it first.

                """;
        String intro = String.format(
                Locale.ROOT,
                head,
                tally.rows(),
                MOST_PER_FORMULA,
                tally.sources(),
                tally.recalled(),
                tally.computed(),
                tally.failed());
        return intro
                + CheckRows.files().stream()
                        .map(file -> section(file, formulas))
                        .collect(Collectors.joining("\n"));
    }

    private static String section(String file, Formulas formulas) {
        String title = file.replace(".csv", "").replace('-', ' ');
        return "## " + title
                + "\n\n| row | quantity | inputs | source | expected | ours | difference | how known | met |\n"
                + "|---|---|---|---|---|---|---|---|---|\n"
                + CheckRows.of(file).stream()
                        .map(row -> line(row, formulas.ours(row)))
                        .collect(Collectors.joining());
    }

    private static String line(CheckRow row, double ours) {
        String inputs = row.inputs().entrySet().stream()
                .map(input -> input.getKey() + " " + number(input.getValue()))
                .collect(Collectors.joining(", "));
        return String.join(
                        " | ",
                        "| " + row.id(),
                        row.quantity(),
                        inputs,
                        row.source(),
                        (number(row.expected()) + " " + row.unit()).trim(),
                        number(ours),
                        String.format(Locale.ROOT, "%.1e", ours - row.expected()),
                        row.howKnown(),
                        row.isMetBy(ours) ? "yes" : "**no**")
                + " |\n";
    }

    /** Nine significant digits, without trailing zeros; powers of ten only for the very small and the very large. */
    private static String number(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(9)).stripTrailingZeros();
        double size = Math.abs(value);
        return size >= 1e-5 && size < 1e7 ? rounded.toPlainString() : rounded.toString();
    }
}
