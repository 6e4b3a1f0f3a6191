package io.github.weirwise.json;

/** An error as a document. */
record ErrorDocument(Mistake error) {
    /** Where, what and how to mend it. */
    record Mistake(String path, String problem, String tryThis) {}

    static ErrorDocument of(DocumentException error) {
        return new ErrorDocument(new Mistake(error.path(), error.problem(), error.tryThis()));
    }
}
