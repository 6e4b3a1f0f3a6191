package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;

/** A cell does not hold what its heading says. */
final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Phrase what;

    Unfit(Phrase what) {
        super(what.key(), null, false, false);
        this.what = what;
    }

    /** What is wrong and what to try. */
    Phrase what() {
        return what;
    }
}
