package io.github.weirwise.unit;

/**
 * Where the skimmer chamber stands against the sump; it decides what the drawing shows and where water goes that leaves the
 * weir, not how the level is reckoned. All three are common practice.
 *
 * @since 0.1
 */
public enum Layout {
    /** A wall inside the sump parts the chamber from the biofilter side; the weir is set into it. */
    IN_SUMP,
    /** The chamber is a box of its own beside the sump; a pipe leads over from behind the weir. */
    OWN_CHAMBER,
    /** The chamber stands over the sump; what comes over the weir falls down into it. */
    OVER_SUMP
}
