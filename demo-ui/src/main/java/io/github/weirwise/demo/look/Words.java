package io.github.weirwise.demo.look;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import java.util.Objects;

/**
 * The demo's own texts in one language and one system of units.
 *
 * @param book how phrases become words
 */
public record Words(PhraseBook book) {
    /** English and metric. */
    public static final Words ENGLISH = new Words(PhraseBook.ENGLISH_METRIC);

    /** Rejects null. */
    public Words {
        Objects.requireNonNull(book, "book");
    }

    /** The demo's text with this name. */
    public String of(String name, Object... values) {
        return book.say(phrase(name, values));
    }

    /** A phrase of any floor. */
    public String say(Phrase phrase) {
        return book.say(phrase);
    }

    /** The phrase behind one of the demo's texts. */
    public static Phrase phrase(String name, Object... values) {
        return Phrase.of("demo." + name, values);
    }

    /** A small step of the weir that is told easily: 1 mm, or 0.1 in. */
    public double smallStepMm() {
        return book.units() == UnitSystem.US_CUSTOMARY ? 2.54 : 1;
    }

    /** A number with its unit, as text. */
    public String say(double value, Unit unit) {
        return book.say(Quantity.of(value, unit));
    }

    /** A range with its unit, as text. */
    public String say(Range range, Unit unit) {
        return book.say(QuantityRange.of(range, unit));
    }
}
