package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.Objects;

/**
 * One goal or limit of a scenario and whether it holds.
 *
 * @param what the goal with the figure that was reached
 * @param met whether it holds
 * @since 0.1
 */
public record GoalCheck(Phrase what, boolean met) {
    /** Rejects null. */
    public GoalCheck {
        Objects.requireNonNull(what, "what");
    }
}
