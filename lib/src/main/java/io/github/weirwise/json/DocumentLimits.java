package io.github.weirwise.json;

import java.time.Instant;

/**
 * How large a document may be. A reader stops at these limits before it has spent time or memory on the rest.
 *
 * @since 0.1
 */
public final class DocumentLimits {
    /** Characters in one document. */
    public static final int MOST_CHARACTERS = 4_000_000;
    /** Objects and arrays inside each other. */
    public static final int DEEPEST_NESTING = 64;
    /** Characters in one text. */
    public static final int LONGEST_TEXT = 20_000;
    /** Characters in one member name. */
    public static final int LONGEST_NAME = 200;
    /** Characters in one number. */
    public static final int LONGEST_NUMBER = 100;
    /** Elements in one array, so also entries of a journal in a request. */
    public static final int MOST_ELEMENTS = 20_000;
    /** Bytes in one line of a journal file. */
    public static final int LONGEST_LINE_BYTES = 262_144;
    /** Bytes in a journal file that is read whole. */
    public static final long LARGEST_JOURNAL_FILE_BYTES = 256L * 1024 * 1024;
    /** Earliest instant that is taken for a real one. */
    public static final Instant EARLIEST = Instant.parse("1950-01-01T00:00:00Z");
    /** Latest instant that is taken for a real one. */
    public static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private DocumentLimits() {}
}
