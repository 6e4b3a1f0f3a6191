package io.github.weirwise.diagnosis;

/**
 * What a cause of a given size does to the model.
 *
 * @since 0.1
 */
@FunctionalInterface
public interface Effect {
    /**
     * The influence of this size.
     *
     * @param size 0 (barely there) to 1 (at its worst)
     */
    Influence at(double size);
}
