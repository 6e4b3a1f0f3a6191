package io.github.weirwise.advice;

/**
 * Why nothing is to be touched.
 *
 * @since 0.1
 */
public enum HoldReason {
    /** The unit is where it should be. */
    ON_TARGET,
    /** The last change has not shown its full effect. */
    STILL_SETTLING,
    /** What is seen lies within the usual scatter. */
    WITHIN_NOISE,
    /** It was seen once only; read again before anything is changed. */
    SEEN_ONCE,
    /** Something in the water passes by itself. */
    PASSES_BY_ITSELF,
    /** A new unit is still breaking in. */
    BREAKING_IN,
    /** There is too little to skim for any weir setting to matter. */
    LITTLE_TO_SKIM,
    /** No setting of the weir brings this unit to its target; this is as good as it gets. */
    BEST_THERE_IS,
    /** Nothing was read yet. */
    NOTHING_READ,
    /** Air or pumps are off on purpose, or on their way back, and the next step is not due yet. */
    AIR_OFF
}
