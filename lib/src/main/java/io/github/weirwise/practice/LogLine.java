package io.github.weirwise.practice;

import io.github.weirwise.reading.JournalEntry;
import java.util.List;
import java.util.Objects;

/**
 * One line of a session's log.
 *
 * @param number from 1
 * @param fromHours hour on the scenario's clock before the step
 * @param untilHours hour after it
 * @param step what was done
 * @param written what it put into the journal, the noted happenings of its time included
 * @param insideWait whether the last change may still have been at work before the step
 */
public record LogLine(
        int number,
        double fromHours,
        double untilHours,
        SessionStep step,
        List<JournalEntry> written,
        boolean insideWait) {
    /** Copies the list; rejects nulls. */
    public LogLine {
        Objects.requireNonNull(step, "step");
        written = List.copyOf(written);
    }
}
