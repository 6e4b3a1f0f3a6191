package io.github.weirwise.sheet;

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
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One cell under its heading.
 *
 * @param text what stands in it, stripped
 * @param heading the heading over it
 * @param decimalComma whether numbers may have a comma for the point
 */
record TableCell(String text, TableHeading heading, boolean decimalComma) {
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?\\d{1,15}(?:[.,]\\d{0,15})?(?:[eE][+-]?\\d{1,3})?)\\s*(.*)");

    /** A cell does not hold what its heading says. */
    static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;

        private final transient Phrase what;

        Unfit(Phrase what) {
            super(what.key(), null, false, false);
            this.what = what;
        }

        Phrase what() {
            return what;
        }
    }

    boolean isEmpty() {
        return text.isEmpty();
    }

    /** Its number in metric units; a unit behind the number beats the heading's. */
    double number() throws Unfit {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.matches()) {
            throw new Unfit(Phrase.of("sheet.table.noNumber", shown()));
        }
        String digits = matcher.group(1);
        if (digits.indexOf(',') >= 0) {
            if (!decimalComma) {
                throw new Unfit(Phrase.of("sheet.table.noNumber", shown()));
            }
            digits = digits.replace(',', '.');
        }
        double value = unit(matcher.group(2)).toMetric().applyAsDouble(Double.parseDouble(digits));
        if (!Double.isFinite(value)) {
            throw new Unfit(Phrase.of("sheet.table.noNumber", shown()));
        }
        return value;
    }

    /** Its number, where a word would have done as well. */
    double numberOr(Enum<?>[] words) throws Unfit {
        try {
            return number();
        } catch (Unfit e) {
            throw new Unfit(Phrase.of("sheet.table.noWordNorNumber", shown(), words(words)));
        }
    }

    boolean yes() throws Unfit {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "1", "x", "full" -> true;
            case "no", "n", "false", "0", "-" -> false;
            default -> throw new Unfit(Phrase.of("sheet.table.noYes", shown()));
        };
    }

    Optional<DarknessWord> darkness() {
        return word(DarknessWord.values());
    }

    FoamLookWord foam() throws Unfit {
        return word(FoamLookWord.values())
                .orElseThrow(() -> new Unfit(Phrase.of("sheet.table.noWord", shown(), words(FoamLookWord.values()))));
    }

    static Phrase outOfRange(OutOfRangeException e) {
        return Phrase.of(
                "sheet.table.outOfRange",
                plain(e.value()),
                plain(e.limits().low()),
                plain(e.limits().high()));
    }

    /** The cell's text, short enough for a message. */
    String shown() {
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
        if (written.isBlank()) {
            return heading.unit();
        }
        Optional<TableUnit> own = TableUnit.of(written);
        if (own.isEmpty() || own.get().kind() != heading.unit().kind()) {
            throw new Unfit(Phrase.of("sheet.table.noNumber", shown()));
        }
        return own.get();
    }

    private <W extends Enum<W>> Optional<W> word(W[] words) {
        String plain = text.toUpperCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        return Stream.of(words).filter(word -> word.name().equals(plain)).findFirst();
    }

    private static Bounds plain(double value) {
        return Bounds.of(value, Unit.PLAIN);
    }
}
