package io.github.weirwise.internal.physics.foam;

/**
 * Where the gas of burst bubbles goes. All three are assumptions of ours: which of them holds in tank foam is not known.
 *
 * @since 0.1
 */
public enum Venting {
    /**
     * It leaves at once through the foam (channels, large bubbles) and lifts nothing any more. The gas that still is foam is
     * Q S(age), so foam slows down on its way: it creeps.
     */
    THROUGH_FOAM,
    /**
     * It leaves only at the foam's top: all gas rises through the foam, and of the bubbles at the top those go over the lip
     * that outlive their age there. Bursting at the top is graded: wet froth and small bubbles burst less, so the age
     * counts by (1 - eps/packing) and by radius over the grown radius.
     */
    AT_TOP,
    /** It joins the neighbours: gas is conserved, bubbles become fewer and larger, r^3 as 1/S(age). */
    BY_MERGING
}
