package io.github.weirwise.json;

/** Which library answers; a test holds it against the pom. */
final class LibraryVersion {
    static final String CURRENT = "0.1.0";

    private LibraryVersion() {}
}
