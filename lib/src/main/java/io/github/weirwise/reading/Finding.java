package io.github.weirwise.reading;

/**
 * How a part was found when looked at.
 *
 * @since 0.1
 */
public enum Finding {
    /** As it should be. */
    GOOD(0.06),
    /** Not clean or not quite right. */
    DOUBTFUL(0.33),
    /** Clearly at fault. */
    BAD(0.7);

    private final double size;

    Finding(double size) {
        this.size = size;
    }

    /** The size of trouble that the word stands for, 0 (clean) to 1 (at its worst); stated judgement. */
    public double size() {
        return size;
    }
}
