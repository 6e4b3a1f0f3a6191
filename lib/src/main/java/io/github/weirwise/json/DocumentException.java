package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;

/**
 * A document is not what it should be: where, what is wrong, and what to try. The only exception that reading a document
 * throws. Message, {@link #problem()} and {@link #tryThis()} are English; the words of other languages come from
 * {@link #problemWords()} and {@link #tryThisWords()}.
 *
 * @since 0.1
 */
public final class DocumentException extends RuntimeException {
    private static final long serialVersionUID = 2L;

    private final String path;
    private final transient Phrase problem;
    private final transient Phrase tryThis;

    DocumentException(String path, Phrase problem, Phrase tryThis) {
        this(path, problem, tryThis, null);
    }

    DocumentException(String path, Phrase problem, Phrase tryThis, Throwable cause) {
        super(cause);
        this.path = path;
        this.problem = problem;
        this.tryThis = tryThis;
    }

    @Override
    public String getMessage() {
        return problem == null ? path : path + ": " + problem() + "; " + tryThis();
    }

    /** Where in the document, as a JSONPath (RFC 9535) such as {@code $.settings.weirCrestMm}; {@code $} is the whole. */
    public String path() {
        return path;
    }

    /** What is wrong there, with the value and the limit, in English. */
    public String problem() {
        return PhraseBook.ENGLISH_METRIC.say(problem);
    }

    /** What to try, in English. */
    public String tryThis() {
        return PhraseBook.ENGLISH_METRIC.say(tryThis);
    }

    /** What is wrong there, for readers of any language. */
    public Phrase problemWords() {
        return problem;
    }

    /** What to try, for readers of any language. */
    public Phrase tryThisWords() {
        return tryThis;
    }

    /** The same for a document that is one line of a file. */
    DocumentException inLine(int number) {
        return new DocumentException("line " + number + ", " + path, problem, tryThis, this);
    }
}
