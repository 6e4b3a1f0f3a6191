package io.github.weirwise.setup;

/**
 * How a part of an installation fits, best first.
 */
public enum Fit {
    /** With the usual margin. */
    FITS,
    /** It works, but without the usual margin. */
    TIGHT,
    /** It does not; do not start before it is changed. */
    FAILS
}
