package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.JournalTrouble;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.UUID;

/**
 * Writes a text file whole or not at all: beside its place first and onto the disk, then moved there. A link stays a link, and
 * the file keeps who may read it.
 */
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
        Path part = null;
        try {
            whole = Files.exists(whole) ? whole.toRealPath() : whole;
            part = whole.resolveSibling("." + whole.getFileName() + "." + UUID.randomUUID() + ".part");
            bytes.into(part, text.getBytes(StandardCharsets.UTF_8));
            sync(part);
            keepMode(whole, part);
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
            return Optional.empty();
        } catch (IOException e) {
            removeQuietly(part);
            return Optional.of(trouble(whole, e));
        }
    }

    private static void sync(Path part) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static void keepMode(Path old, Path part) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (view != null && Files.exists(old)) {
            view.setPermissions(Files.getPosixFilePermissions(old));
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
