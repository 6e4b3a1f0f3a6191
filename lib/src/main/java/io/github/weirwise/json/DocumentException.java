package io.github.weirwise.json;

/**
 * A document is not what it should be: where, what is wrong, and what to try. The only exception that reading a document
 * throws.
 *
 * @since 0.1
 */
public final class DocumentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String path;
    private final String problem;
    private final String tryThis;

    DocumentException(String path, String problem, String tryThis) {
        this(path, problem, tryThis, null);
    }

    DocumentException(String path, String problem, String tryThis, Throwable cause) {
        super(path + ": " + problem + "; " + tryThis, cause);
        this.path = path;
        this.problem = problem;
        this.tryThis = tryThis;
    }

    /** Where in the document, as a JSONPath (RFC 9535) such as {@code $.settings.weirCrestMm}; {@code $} is the whole. */
    public String path() {
        return path;
    }

    /** What is wrong there, with the value and the limit. */
    public String problem() {
        return problem;
    }

    /** What to try. */
    public String tryThis() {
        return tryThis;
    }

    /** The same for a document that is one line of a file. */
    DocumentException inLine(int number) {
        return new DocumentException("line " + number + ", " + path, problem, tryThis, this);
    }
}
