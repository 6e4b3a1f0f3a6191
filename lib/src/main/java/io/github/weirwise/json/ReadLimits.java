package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.exc.StreamConstraintsException;

/** The limits of documents where the text is taken apart, with words of their own for what goes beyond them. */
final class ReadLimits extends StreamReadConstraints {
    private static final long serialVersionUID = 1L;
    /** No limit of its own: the length of the document bounds the number of tokens. */
    private static final long ANY_NUMBER = -1;

    ReadLimits() {
        super(
                DocumentLimits.DEEPEST_NESTING,
                DocumentLimits.MOST_CHARACTERS,
                ANY_NUMBER,
                DocumentLimits.LONGEST_NUMBER,
                DocumentLimits.LONGEST_TEXT,
                DocumentLimits.LONGEST_NAME);
    }

    @Override
    public void validateNestingDepth(int depth) {
        check(depth, DocumentLimits.DEEPEST_NESTING, "json.tooDeep");
    }

    @Override
    public void validateDocumentLength(long length) {
        check(length, DocumentLimits.MOST_CHARACTERS, "json.documentCharacters");
    }

    @Override
    public void validateFPLength(int length) {
        checkNumber(length);
    }

    @Override
    public void validateIntegerLength(int length) {
        checkNumber(length);
    }

    @Override
    public void validateBigIntegerScale(int scale) {
        checkNumber(Math.abs(scale));
    }

    @Override
    public void validateStringLength(int length) {
        validateStringLengthLong(length);
    }

    @Override
    public void validateStringLengthLong(long length) {
        check(length, DocumentLimits.LONGEST_TEXT, "json.textTooLong");
    }

    @Override
    public void validateNameLength(int length) {
        check(length, DocumentLimits.LONGEST_NAME, "json.nameTooLong");
    }

    private static void checkNumber(int length) {
        check(length, DocumentLimits.LONGEST_NUMBER, "json.numberTooLong");
    }

    private static void check(long found, long limit, String key) {
        if (found > limit) {
            throw new Exceeded(Phrase.of(key, found, limit));
        }
    }

    /** A limit is exceeded, with words for it. */
    static final class Exceeded extends StreamConstraintsException {
        private static final long serialVersionUID = 1L;

        private final transient Phrase problem;

        private Exceeded(Phrase problem) {
            super(problem.key());
            this.problem = problem;
        }

        Phrase problem() {
            return problem;
        }
    }
}
