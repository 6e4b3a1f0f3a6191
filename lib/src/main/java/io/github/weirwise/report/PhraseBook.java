package io.github.weirwise.report;

import java.text.MessageFormat;
import java.text.NumberFormat;
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

    /** A quantity as a person reads it, for example {@code 22.5 mm}. */
    public String say(Quantity quantity) {
        return withSymbol(number(quantity.value(), quantity.unit()), quantity.unit());
    }

    /** A range as a person reads it, for example {@code 20.0 to 24.0 mm}. */
    public String say(QuantityRange range) {
        String low = number(range.range().low(), range.unit());
        String high = number(range.range().high(), range.unit());
        String between = low.equals(high) ? low : say(Phrase.of("report.range", low, high));
        return withSymbol(between, range.unit());
    }

    /** The number alone, with the decimals that suit the unit. */
    public String number(double value, Unit unit) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        int decimals = unit.decimals(units);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setGroupingUsed(false);
        String text = format.format(unit.toShown(value, units));
        return text.equals(format.format(-0.0)) ? format.format(0.0) : text;
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
        if (value instanceof Phrase phrase) {
            return say(phrase);
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
            return number(number.doubleValue(), Unit.PLAIN);
        }
        return value;
    }

    private String withSymbol(String number, Unit unit) {
        String symbol = unit.symbol(units);
        if (symbol.isEmpty()) {
            return number;
        }
        return unit == Unit.SHARE ? number + symbol : number + " " + symbol;
    }

    private String pattern(String key) {
        String floor = key.substring(0, key.indexOf('.'));
        try {
            return texts("io.github.weirwise." + floor + ".texts").getString(key);
        } catch (MissingResourceException e) {
            throw new IllegalArgumentException("no text for key '" + key + "' in the texts of '" + floor + "'", e);
        }
    }

    /** A language that is not there reads English, whatever the default language of the machine is. */
    private ResourceBundle texts(String name) {
        ResourceBundle found = ResourceBundle.getBundle(name, locale);
        boolean wanted = found.getLocale().getLanguage().equals(locale.getLanguage());
        return wanted ? found : ResourceBundle.getBundle(name, Locale.ROOT);
    }
}
