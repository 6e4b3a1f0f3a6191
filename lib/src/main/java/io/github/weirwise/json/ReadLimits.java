package io.github.weirwise.json;

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
        check(
                depth,
                DocumentLimits.DEEPEST_NESTING,
                "objects and arrays lie %d deep inside each other, may lie %d deep");
    }

    @Override
    public void validateDocumentLength(long length) {
        check(length, DocumentLimits.MOST_CHARACTERS, "the document has over %d characters, may have %d");
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
        check(length, DocumentLimits.LONGEST_TEXT, "a text has %d characters, may have %d");
    }

    @Override
    public void validateNameLength(int length) {
        check(length, DocumentLimits.LONGEST_NAME, "a name has %d characters, may have %d");
    }

    private static void checkNumber(int length) {
        check(length, DocumentLimits.LONGEST_NUMBER, "a number has %d characters, may have %d");
    }

    private static void check(long found, long limit, String words) {
        if (found > limit) {
            throw new StreamConstraintsException(String.format(java.util.Locale.ROOT, words, found, limit));
        }
    }
}
