package io.github.weirwise.care;

import io.github.weirwise.report.Phrase;

/**
 * How urgent a task is, least first.
 *
 * @since 0.1
 */
public enum CareState {
    /** Not yet. */
    FRESH,
    /** Within a day, or a tenth of its interval. */
    SOON,
    /** Now. */
    DUE,
    /** More than a quarter of its interval late, a day at least. */
    OVERDUE;

    /** It in words. */
    public Phrase words() {
        return Phrase.of("care.state." + name());
    }
}
