package io.github.weirwise.reading;

/**
 * How a part was found when looked at.
 *
 * @since 0.1
 */
public enum Finding {
    /** As it should be. */
    GOOD,
    /** Not clean or not quite right. */
    DOUBTFUL,
    /** Clearly at fault. */
    BAD
}
