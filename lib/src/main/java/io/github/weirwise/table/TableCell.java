package io.github.weirwise.table;

import io.github.weirwise.internal.physics.seawater.SpecificGravity;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One cell under its heading.
 *
 * @param text what stands in it, stripped; empty when that only says that there is nothing
 * @param place the column as a spreadsheet counts it
 * @param heading the heading over it
 * @param habits how the table writes numbers
 */
record TableCell(String text, int place, TableHeading heading, TableHabits habits) {
    private static final Set<String> ABSENT =
            Set.of("", "n/a", "na", "n.a.", "#n/a", "-", "--", "\u2013", "\u2014", "?", "null");
    private static final int LONGEST_WORD = 60;

    /** Whether a stripped cell says that there is nothing to say. */
    static boolean isAbsent(String text) {
        return text.length() < 5 && ABSENT.contains(text.toLowerCase(Locale.ROOT));
    }

    boolean isEmpty() {
        return text.isEmpty();
    }

    /**
     * Its number in metric units; a unit behind the number beats the heading's. A specific gravity under a heading that does not say so is asked
     * back.
     */
    double number() throws Unfit {
        WrittenNumber written =
                WrittenNumber.of(text).orElseThrow(() -> new Unfit(Phrase.of("table.noNumber", shown())));
        double value =
                unit(written.unit()).toMetric().applyAsDouble(habits.value(written, heading.isGravity(), shown()));
        if (!Double.isFinite(value)) {
            throw new Unfit(Phrase.of("table.noNumber", shown()));
        }
        boolean gravity =
                heading.column() == TableColumn.SALINITY && !heading.isGravity() && SpecificGravity.looksLikeOne(value);
        if (gravity) {
            throw new Unfit(Phrase.of("table.gravity", shown()));
        }
        return value;
    }

    /** Its number, where a word would have done as well. */
    double numberOr(Enum<?>[] words) throws Unfit {
        try {
            return number();
        } catch (Unfit e) {
            throw new Unfit(Phrase.of("table.noWordNorNumber", shown(), words(words)));
        }
    }

    boolean yes() throws Unfit {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "1", "x", "full" -> true;
            case "no", "n", "false", "0" -> false;
            default -> throw new Unfit(Phrase.of("table.noYes", shown()));
        };
    }

    Optional<DarknessWord> darkness() {
        return word(DarknessWord.values());
    }

    FoamLookWord foam() throws Unfit {
        return word(FoamLookWord.values())
                .orElseThrow(() -> new Unfit(Phrase.of("table.noWord", shown(), words(FoamLookWord.values()))));
    }

    static Phrase outOfRange(OutOfRangeException e) {
        return Phrase.of(
                "table.outOfRange",
                plain(e.value()),
                plain(e.limits().low()),
                plain(e.limits().high()));
    }

    /** The cell's text, short enough for a message. */
    String shown() {
        return shown(text);
    }

    /** A text short enough for a message. */
    static String shown(String text) {
        return text.codePointCount(0, text.length()) <= 40
                ? text
                : text.substring(0, text.offsetByCodePoints(0, 30)) + "\u2026";
    }

    static String words(Enum<?>[] words) {
        List<String> plain = Arrays.stream(words)
                .map(word -> word.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
        return String.join(", ", plain);
    }

    private TableUnit unit(String written) throws Unfit {
        if (written.isEmpty()) {
            return heading.unit();
        }
        Optional<TableUnit> own = TableUnit.of(written);
        if (own.isEmpty() || own.get().kind() != heading.unit().kind()) {
            throw new Unfit(Phrase.of("table.noNumber", shown()));
        }
        return own.get();
    }

    private <W extends Enum<W>> Optional<W> word(W[] words) {
        if (text.length() > LONGEST_WORD) {
            return Optional.empty();
        }
        String plain = text.toUpperCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        return Stream.of(words).filter(word -> word.name().equals(plain)).findFirst();
    }

    private static Bounds plain(double value) {
        return Bounds.of(value, Unit.PLAIN);
    }
}
