package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import java.util.Objects;

/**
 * One habit of sound work, and whether it was kept, with the reason.
 *
 * @param habit which
 * @param verdict whether it was kept
 * @param reason why this is said, with the moment
 * @param costDays what it cost in days of a badly running unit, as far as the decisions were replayed; 0 unless missed
 */
public record ProcessPoint(Habit habit, Verdict verdict, Phrase reason, double costDays) {
    /** Habits. */
    public enum Habit {
        /** Not two changes at a visit. */
        ONE_CHANGE_AT_A_TIME,
        /** No change before the last one could be judged. */
        WAITED_FOR_THE_FOAM,
        /** A reading before each change. */
        LOOKED_BEFORE_MOVING,
        /** No raising of the weir before the air was looked at. */
        RULED_OUT_THE_AIR_INTAKE,
        /** When it floods, the first act makes it safe. */
        MADE_SAFE_FIRST,
        /** No act where none was called for. */
        LEFT_WELL_ALONE;

        /** The habit in words. */
        public Phrase words() {
            return Phrase.of("practice.habit." + name());
        }
    }

    /** Whether it was kept. */
    public enum Verdict {
        /** Kept. */
        KEPT,
        /** Not kept. */
        MISSED,
        /** There was no occasion. */
        NO_OCCASION;

        /** The verdict in words. */
        public Phrase words() {
            return Phrase.of("practice.verdict." + name());
        }
    }

    /** Rejects nulls. */
    public ProcessPoint {
        Objects.requireNonNull(habit, "habit");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(reason, "reason");
    }

    ProcessPoint(Habit habit, Verdict verdict, Phrase reason) {
        this(habit, verdict, reason, 0);
    }
}
