package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import java.util.Objects;

/**
 * How likely one cause is, and why. Several can hold at once, so the chances need not add up.
 *
 * @param cause which
 * @param probability chance that it is clearly there, 0 to 1
 * @param sizes range that holds 80 % of its likely sizes, 0 (not there) to 1 (at its worst)
 * @param evidence readings that moved it, the strongest first
 * @since 0.1
 */
public record CauseShare(Cause cause, double probability, Range sizes, Reason evidence) {
    /** Rejects nulls. */
    public CauseShare {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(sizes, "sizes");
        Objects.requireNonNull(evidence, "evidence");
    }
}
