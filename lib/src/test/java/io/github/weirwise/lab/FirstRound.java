package io.github.weirwise.lab;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What the adviser of the first round came to on the panel, kept as it was printed. */
final class FirstRound {
    static final int TANKS = 40;

    private FirstRound() {}

    /** The table in Markdown. */
    static String table() {
        try (InputStream in = FirstRound.class.getResourceAsStream("first-round.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
