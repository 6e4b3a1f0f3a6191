package io.github.weirwise.unit;

/**
 * The sums that everything seen at a unit hangs on. Each is a plain sum of terms, so that a shortfall can be shared out; the terms are derived in docs/reference/model.md.
 *
 * @since 0.1
 */
public enum Sum {
    /** The true crest over its mark, mm: the plate's slip. */
    CREST,
    /** Head over the crest, mm: flow and a pad that backs water up. */
    HEAD,
    /** Clear-water level outside the column over the funnel base, mm: crest and head. */
    CLEAR_LEVEL,
    /** Level in the column over the funnel base, mm: clear level, gas, pressure in the cup, foam's weight, the unit's own offset. */
    LEVEL,
    /**
     * Natural logarithm of the amount over the wanted one: level times slope, air times its exponent, film, salt, load, what
     * passes, the unit's own foaminess.
     */
    AMOUNT,
    /** Natural logarithm of the air through the air line over the air that is set. */
    AIR,
    /** Natural logarithm of the flow over the flow that is set. */
    FLOW
}
