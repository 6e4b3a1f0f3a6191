package io.github.weirwise.reading;

import io.github.weirwise.report.Range;

/**
 * Looks of the foam in the neck, driest first.
 *
 * @since 0.1
 */
public enum FoamLookWord {
    /** No foam in the neck at all. */
    NONE(-9, -4.5),
    /** Foam stands low in the neck and breaks there. */
    LOW_IN_NECK(-5, -2.2),
    /** Stiff, open foam that creeps over in flakes. */
    STIFF(-2.4, -0.8),
    /** Fine, creamy foam that slides slowly over the lip. */
    CREAMY(-0.9, 0.9),
    /** Wet foam that runs over. */
    RUNNY(0.8, 2.5),
    /** Water with bubbles streams over. */
    STREAMING(2.3, 6);

    private final Range amountLog;

    FoamLookWord(double low, double high) {
        amountLog = new Range(low, high);
    }

    /** Natural logarithms of the amount over the wanted one that the word stands for; stated judgement, they overlap. */
    public Range amountLog() {
        return amountLog;
    }

    /** Whether it runs, and fills a cup in hours. */
    public boolean runs() {
        return this == RUNNY || this == STREAMING;
    }

    /** Whether it does not reach the lip: whatever ran over has stopped. */
    public boolean stands() {
        return this == NONE || this == LOW_IN_NECK;
    }
}
