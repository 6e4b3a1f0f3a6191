package io.github.weirwise.internal.kept;

/**
 * Which library this is; a test holds it against the pom.
 *
 * @since 0.2
 */
public final class LibraryVersion {
    private LibraryVersion() {}

    /** Its version, as in the pom. */
    public static String current() {
        return "0.1.0";
    }
}
