package io.github.weirwise.advice;

import io.github.weirwise.diagnosis.BeliefOptions;
import io.github.weirwise.report.Require;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * How the adviser works and what it may ask for.
 *
 * @param belief number of possibilities and seed
 * @param clocks waiting times
 * @param looks readings that can be taken at this unit; the adviser asks for no other
 * @param secondThoughts 0 to 20: a belief rests on few possibilities, and of several steps the one whose worth is overrated is
 *     chosen too often; so before anything is touched so many more beliefs are formed from other draws, and the choice is
 *     made anew from all of them. Each costs as much as the first
 * @param looksAhead 1 or 2: with 1 a look is judged by what can be done right after it, with 2 also by the look that would
 *     follow, so that two looks which only tell together are found
 * @since 0.1
 */
public record AdviserOptions(
        BeliefOptions belief, Clocks clocks, Set<LookKind> looks, int secondThoughts, int looksAhead) {
    private static final int USUAL_SECOND_THOUGHTS = 3;
    private static final int USUAL_LOOKS_AHEAD = 2;

    /** Default belief, common-practice clocks, every kind of reading, three second thoughts, two looks ahead. */
    public static final AdviserOptions DEFAULT =
            new AdviserOptions(BeliefOptions.DEFAULT, Clocks.COMMON_PRACTICE, EnumSet.allOf(LookKind.class));

    /** With the usual number of second thoughts and looks ahead. */
    public AdviserOptions(BeliefOptions belief, Clocks clocks, Set<LookKind> looks) {
        this(belief, clocks, looks, USUAL_SECOND_THOUGHTS, USUAL_LOOKS_AHEAD);
    }

    /**
     * Copies the set; rejects nulls.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if {@code secondThoughts} is not 0 to 20 or {@code looksAhead} not
     *     1 or 2
     */
    public AdviserOptions {
        Objects.requireNonNull(belief, "belief");
        Objects.requireNonNull(clocks, "clocks");
        looks = Set.copyOf(looks);
        Require.inRange(
                "secondThoughts",
                secondThoughts,
                0,
                20,
                "",
                "3 is enough for one unit, 0 for a first look at very many");
        Require.inRange("looksAhead", looksAhead, 1, 2, "", "2 unless you want to see what 1 gives away");
    }

    /** The same with another number of second thoughts. */
    public AdviserOptions withSecondThoughts(int count) {
        return new AdviserOptions(belief, clocks, looks, count, looksAhead);
    }

    /** The same with another number of looks ahead. */
    public AdviserOptions withLooksAhead(int count) {
        return new AdviserOptions(belief, clocks, looks, secondThoughts, count);
    }
}
