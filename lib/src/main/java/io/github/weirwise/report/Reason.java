package io.github.weirwise.report;

import java.util.List;
import java.util.Objects;

/**
 * A line of justification with the lines that support it. The parent summarises its children, so that a reader may stop
 * at any depth.
 *
 * @param line the claim
 * @param because what supports it, in reading order; empty for a leaf
 * @since 0.1
 */
public record Reason(Phrase line, List<Reason> because) {
    /** Rejects nulls and copies the list. */
    public Reason {
        Objects.requireNonNull(line, "line");
        because = List.copyOf(because);
    }

    /** A leaf. */
    public static Reason of(Phrase line) {
        return new Reason(line, List.of());
    }

    /** A claim with its support. */
    public static Reason of(Phrase line, Reason... because) {
        return new Reason(line, List.of(because));
    }
}
