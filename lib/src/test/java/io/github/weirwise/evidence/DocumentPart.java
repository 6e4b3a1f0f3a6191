package io.github.weirwise.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The part of a document that a command writes, between two comments that name the command. */
record DocumentPart(Path document, String command) {
    private String begin() {
        return "<!-- written by the command " + command + " -->\n";
    }

    private String end() {
        return "<!-- end of " + command + " -->";
    }

    /**
     * The part as it stands.
     *
     * @throws IllegalStateException if the document has no such part
     */
    String read() throws IOException {
        String text = Files.readString(document);
        int from = text.indexOf(begin());
        int to = text.indexOf(end());
        if (from < 0 || to < from) {
            throw new IllegalStateException(document + " has no part between " + begin() + " and " + end());
        }
        return text.substring(from + begin().length(), to);
    }

    /** Puts another text in its place. */
    void write(String part) throws IOException {
        String before = read();
        String text = Files.readString(document);
        Files.writeString(document, text.replace(begin() + before + end(), begin() + part + end()));
    }
}
