package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.Objects;

/**
 * One goal or limit, and what came of it.
 *
 * @param what goal and what was reached, in words
 * @param verdict what can be said of it
 */
public record GoalCheck(Phrase what, Verdict verdict) {
    /** What can be said of a goal. */
    public enum Verdict {
        /** Reached, or kept to the end. */
        MET,
        /** Not reached in the whole time, or broken. */
        MISSED,
        /** The session was stopped before it could be told. */
        NOT_PLAYED;

        /** In words. */
        public Phrase words() {
            return Phrase.of("practice.goalVerdict." + name());
        }
    }

    /** Rejects nulls. */
    public GoalCheck {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(verdict, "verdict");
    }

    /** Whether it was reached or kept. */
    public boolean met() {
        return verdict == Verdict.MET;
    }
}
