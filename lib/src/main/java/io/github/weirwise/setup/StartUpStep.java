package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Warning;

/**
 * One step of the first filling and start.
 *
 * @param order its place, from 1
 * @param task what kind of step it is
 * @param figure the figure for this unit
 * @param todo what to do, with the figure and others in words
 */
public record StartUpStep(int order, StartUpTask task, Quantity figure, Phrase todo) {
    /** What to see when it is done. */
    public Phrase see() {
        return task.see();
    }

    /** What to do if that is not to be seen. */
    public Phrase ifNot() {
        return task.ifNot();
    }

    /** What to mind. */
    public Warning caution() {
        return task.caution();
    }
}
