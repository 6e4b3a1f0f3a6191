package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.util.Objects;

/**
 * A step that cannot be taken now; says why and what to try. The session is as it was.
 */
public final class RefusedStepException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Phrase reason;

    RefusedStepException(Phrase reason) {
        this(reason, null);
    }

    RefusedStepException(Phrase reason, Throwable cause) {
        super(PhraseBook.ENGLISH_METRIC.say(Objects.requireNonNull(reason, "reason")), cause);
        this.reason = reason;
    }

    /** Why, to be said in any language. */
    public Phrase reason() {
        return reason;
    }
}
