package io.github.weirwise.reading;

/** How a part was found when looked at. */
public enum Finding {
    /** As it should be. */
    GOOD,
    /** Not clean or not quite right. */
    DOUBTFUL,
    /** Clearly at fault. */
    BAD
}
