package io.github.weirwise.reading;

/**
 * Looks of the foam in the neck, driest first.
 *
 * @since 0.1
 */
public enum FoamLookWord {
    /** No foam in the neck at all. */
    NONE,
    /** Foam stands low in the neck and breaks there. */
    LOW_IN_NECK,
    /** Stiff, open foam that creeps over in flakes. */
    STIFF,
    /** Fine, creamy foam that slides slowly over the lip. */
    CREAMY,
    /** Wet foam that runs over. */
    RUNNY,
    /** Water with bubbles streams over. */
    STREAMING
}
