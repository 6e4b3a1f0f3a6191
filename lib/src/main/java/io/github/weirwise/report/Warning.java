package io.github.weirwise.report;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Doubt or danger that comes with a result, worded as its consequence.
 *
 * @param severity how much it weighs
 * @param text what it means for the reader
 * @since 0.1
 */
public record Warning(Severity severity, Phrase text) {
    /** Rejects nulls. */
    public Warning {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(text, "text");
    }

    /** A {@link Severity#NOTE}. */
    public static Warning note(String key, Object... values) {
        return new Warning(Severity.NOTE, Phrase.of(key, values));
    }

    /** A {@link Severity#CAUTION}. */
    public static Warning caution(String key, Object... values) {
        return new Warning(Severity.CAUTION, Phrase.of(key, values));
    }

    /** A {@link Severity#DANGER}. */
    public static Warning danger(String key, Object... values) {
        return new Warning(Severity.DANGER, Phrase.of(key, values));
    }

    /** The given warnings without repetition, gravest first, otherwise in their given order. */
    public static List<Warning> ranked(Collection<Warning> warnings) {
        return warnings.stream()
                .distinct()
                .sorted(Comparator.comparing(Warning::severity).reversed())
                .toList();
    }
}
