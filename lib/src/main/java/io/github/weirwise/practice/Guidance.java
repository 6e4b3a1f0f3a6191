package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;

/**
 * How much a trainee is helped; it fades from full to none.
 */
public enum Guidance {
    /** Hints come by themselves; the adviser's view opens after the own one. */
    FULL,
    /** Hints come when asked for; the adviser's view opens after the own one. */
    ON_REQUEST,
    /** No hints, and the adviser's view stays shut until the debrief. */
    NONE;

    /** The guidance in words. */
    public Phrase words() {
        return Phrase.of("practice.guidance." + name());
    }

    /** The next weaker one; none stays none. */
    public Guidance faded() {
        return this == FULL ? ON_REQUEST : NONE;
    }

    /** The next stronger one; full stays full. */
    public Guidance raised() {
        return this == NONE ? ON_REQUEST : FULL;
    }
}
