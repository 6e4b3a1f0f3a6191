package io.github.weirwise.report;

import java.util.ArrayList;
import java.util.Collection;
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
        // Plain loops: streams, lambdas and the hash of a record made up most of what the first operating point cost.
        List<Warning> ranked = new ArrayList<>(warnings.size());
        Severity[] severities = Severity.values();
        for (int grave = severities.length - 1; grave >= 0; grave--) {
            for (Warning each : warnings) {
                if (each.severity == severities[grave] && !holds(ranked, each)) {
                    ranked.add(each);
                }
            }
        }
        return List.copyOf(ranked);
    }

    private static boolean holds(List<Warning> ranked, Warning wanted) {
        for (Warning each : ranked) {
            if (each.text.key().equals(wanted.text.key()) && each.equals(wanted)) {
                return true;
            }
        }
        return false;
    }
}
