package io.github.weirwise.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The JSON Schemas (2020-12) of all documents, for whoever checks documents with a tool of their own. Each has an identifier
 * {@code urn:weirwise:schema:2:NAME}, and refers to the others by theirs.
 *
 * @since 0.1
 */
public final class Schemas {
    /** Names of the schemas: whole documents first, then parts that several documents share. */
    public static final List<String> NAMES = List.of(
            "request",
            "answer",
            "options",
            "service-request",
            "service-answer",
            "error",
            "unit",
            "settings",
            "journal",
            "operating-point",
            "installation",
            "scenario",
            "session",
            "journal-header",
            "journal-entry",
            "sentence",
            "reason",
            "warning",
            "range",
            "version");

    private Schemas() {}

    /**
     * The text of a schema.
     *
     * @param name one of {@link #NAMES}
     * @throws IllegalArgumentException if it is not
     */
    public static String text(String name) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException(
                    "no schema " + Quote.of(name) + "; use one of " + String.join(", ", NAMES));
        }
        try (InputStream in = Schemas.class.getResourceAsStream("schema/" + name + ".json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the jar is damaged", e);
        }
    }
}
