package io.github.weirwise.report;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Objects;
import java.util.ResourceBundle;

/**
 * Turns phrases into words of one language and one system of units.
 *
 * <p>Texts live beside the floor that says them, as {@code texts.properties} (English) and {@code texts_xx.properties}.
 * Patterns follow {@link MessageFormat}: values arrive already formatted, so a pattern holds plain {@code {0}} only.
 * Immutable and thread-safe.
 *
 * @param locale language and number format
 * @param units system of units
 * @since 0.1
 */
public record PhraseBook(Locale locale, UnitSystem units) {
    /** English words and number format, metric units. */
    public static final PhraseBook ENGLISH_METRIC = new PhraseBook(Locale.ENGLISH, UnitSystem.METRIC);

    /** Rejects nulls. */
    public PhraseBook {
        Objects.requireNonNull(locale, "locale");
        Objects.requireNonNull(units, "units");
    }

    /**
     * The words of a phrase.
     *
     * @throws IllegalArgumentException if no text is known for its key
     */
    public String say(Phrase phrase) {
        Object[] shown = phrase.values().stream().map(this::show).toArray();
        return new MessageFormat(pattern(phrase.key()), locale).format(shown);
    }

    /** The words of a warning. */
    public String say(Warning warning) {
        return say(warning.text());
    }

    /** A quantity as a person reads it, for example {@code 23 mm}, {@code 1,250 mL/day}, {@code under 5 %}. */
    public String say(Quantity quantity) {
        return new Spoken(this).quantity(quantity);
    }

    /** A range as a person reads it, for example {@code 20 to 24 mm}; rounded to about a tenth of its width. */
    public String say(QuantityRange range) {
        return new Spoken(this).range(range);
    }

    /** The rounded number alone, in the reader's unit. */
    public String number(double value, Unit unit) {
        return new Spoken(this).number(value, unit, false);
    }

    /** The number as it would be typed into a form, in the reader's unit: not rounded for reading, without separators. */
    public String typed(double value, Unit unit) {
        return new Spoken(this).typed(value, unit);
    }

    /** A reason tree as indented lines, two spaces a level. */
    public String say(Reason reason) {
        StringBuilder text = new StringBuilder();
        append(text, reason, 0);
        return text.toString();
    }

    private void append(StringBuilder text, Reason reason, int depth) {
        text.append("  ".repeat(depth)).append(say(reason.line())).append('\n');
        for (Reason child : reason.because()) {
            append(text, child, depth + 1);
        }
    }

    private Object show(Object value) {
        if (value instanceof Quantity quantity) {
            return say(quantity);
        }
        if (value instanceof QuantityRange range) {
            return say(range);
        }
        if (value instanceof Band band) {
            return new Spoken(this).band(band);
        }
        if (value instanceof Phrase phrase) {
            return say(phrase);
        }
        if (value instanceof Count count) {
            return say(count.phrase());
        }
        if (value instanceof Moment moment) {
            return new Dates(this).moment(moment);
        }
        if (value instanceof PracticeTime time) {
            return new Dates(this).practiceTime(time);
        }
        if (value instanceof LocalDate date) {
            return new Dates(this).date(date);
        }
        if (value instanceof Bounds bounds) {
            return new Spoken(this).bounds(bounds);
        }
        if (value instanceof List<?> parts) {
            return String.join(
                    say(Phrase.of("report.listSeparator")),
                    parts.stream().map(part -> String.valueOf(show(part))).toList());
        }
        if (value instanceof Integer || value instanceof Long) {
            return value.toString();
        }
        if (value instanceof Number number) {
            double plain = number.doubleValue();
            return Double.isFinite(plain) ? number(plain, Unit.PLAIN) : String.valueOf(plain);
        }
        return value;
    }

    /** The text of a key with its places still open. */
    String pattern(String key) {
        String floor = key.substring(0, key.indexOf('.'));
        try {
            return texts("io.github.weirwise." + floor + ".texts").getString(key);
        } catch (MissingResourceException e) {
            throw new IllegalArgumentException("no text for key '" + key + "' in the texts of '" + floor + "'", e);
        }
    }

    /** The language that the texts of this floor are really in. */
    Locale language() {
        String language = texts("io.github.weirwise.report.texts").getLocale().getLanguage();
        return language.isEmpty() && !locale.getLanguage().equals(Locale.ENGLISH.getLanguage())
                ? Locale.ENGLISH
                : locale;
    }

    /** A language that is not there reads English, whatever the default language of the machine is. */
    private ResourceBundle texts(String name) {
        ResourceBundle found = ResourceBundle.getBundle(name, locale);
        boolean wanted = found.getLocale().getLanguage().equals(locale.getLanguage());
        return wanted ? found : ResourceBundle.getBundle(name, Locale.ROOT);
    }
}
