package io.github.weirwise.report;

/**
 * A value cannot be taken, for another reason than a limit. The message is English and metric; {@link #problem()} and
 * {@link #tryThis()} are its two halves for readers of other languages and units.
 *
 * @since 0.2
 */
public final class WrongValueException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final transient Phrase problem;
    private final transient Phrase tryThis;

    /**
     * @param name the member's name, as its holder spells it
     * @param problem what is wrong with it
     * @param tryThis what to try
     */
    public WrongValueException(String name, Phrase problem, Phrase tryThis) {
        super(PhraseBook.ENGLISH_METRIC.say(problem) + "; " + PhraseBook.ENGLISH_METRIC.say(tryThis));
        this.name = name;
        this.problem = problem;
        this.tryThis = tryThis;
    }

    /** The member's name. */
    public String name() {
        return name;
    }

    /** What is wrong; null after the exception was sent through a stream. */
    public Phrase problem() {
        return problem;
    }

    /** What to try; null after the exception was sent through a stream. */
    public Phrase tryThis() {
        return tryThis;
    }
}
