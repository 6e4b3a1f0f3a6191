package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.JournalTrouble;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** Writes a text file whole or not at all: beside its place first, then moved there. */
final class SavedText {
    private SavedText() {}

    /** How the bytes get into the file; a test puts a full disk here. */
    interface Bytes {
        void into(Path file, byte[] bytes) throws IOException;
    }

    /** Writes it; gives what went wrong, if anything. */
    static Optional<Phrase> write(Path path, String text) {
        return write(path, text, Files::write);
    }

    static Optional<Phrase> write(Path path, String text, Bytes bytes) {
        Path whole = path.toAbsolutePath();
        Path folder = whole.getParent();
        Path part = null;
        try {
            part = Files.createTempFile(folder, "." + whole.getFileName(), ".part");
            bytes.into(part, text.getBytes(StandardCharsets.UTF_8));
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
            return Optional.empty();
        } catch (IOException e) {
            removeQuietly(part);
            return Optional.of(trouble(whole, e));
        }
    }

    static Phrase trouble(Path path, IOException e) {
        Object reason =
                e instanceof AccessDeniedException ? Words.phrase("trouble.readOnly") : JournalTrouble.reason(e);
        return Words.phrase("trouble.save", String.valueOf(path.getFileName()), reason);
    }

    private static void removeQuietly(Path part) {
        if (part != null) {
            try {
                Files.deleteIfExists(part);
            } catch (IOException e) {
                // What went wrong before is what has to be told.
            }
        }
    }
}
