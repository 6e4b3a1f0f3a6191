package io.github.weirwise.practice;

import java.util.List;
import java.util.Objects;

/**
 * A session as it is kept: scenario, options and steps. {@link PracticeSession#replay} gives the session again, bit for bit
 * with the same version of the library.
 *
 * @param scenario the scenario, whole, so that the record stands alone
 * @param options who and how
 * @param steps what was done, in order
 */
public record SessionRecord(Scenario scenario, SessionOptions options, List<SessionStep> steps) {
    /** Copies the list; rejects nulls. */
    public SessionRecord {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(options, "options");
        steps = List.copyOf(steps);
    }
}
