package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.JournalTrouble;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * Writes a file whole or not at all: beside its place first and onto the disk, then moved there. A link stays a link, and the
 * file keeps who may read it; nobody else reads it meanwhile. What is no file, such as a printer's device, is written straight to.
 */
final class SavedText {
    private static final int MOST_LINKS = 40;
    private static final FileAttribute<?> FOR_ME_ALONE =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

    private SavedText() {}

    /** What is to stand in the file; a test puts a full disk here. */
    interface Content {
        void into(OutputStream file) throws IOException;
    }

    /** Writes it; gives what went wrong, if anything. */
    static Optional<Phrase> write(Path path, String text) {
        return write(path, file -> file.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    static Optional<Phrase> write(Path path, Content content) {
        try {
            Path whole = behindLinks(path.toAbsolutePath());
            if (Files.exists(whole)
                    && Files.readAttributes(whole, BasicFileAttributes.class).isOther()) {
                try (OutputStream device = Files.newOutputStream(whole)) {
                    content.into(device);
                }
            } else {
                replace(whole, content);
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(trouble(path, e));
        }
    }

    /** Also where the last link leads to nothing yet. */
    private static Path behindLinks(Path path) throws IOException {
        Path at = path;
        for (int i = 0; Files.isSymbolicLink(at); i++) {
            if (i == MOST_LINKS) {
                throw new FileSystemLoopException(path.toString());
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    private static void replace(Path whole, Content content) throws IOException {
        Path part = whole.resolveSibling("." + whole.getFileName() + "." + UUID.randomUUID() + ".part");
        PosixFileAttributeView old = Files.getFileAttributeView(whole, PosixFileAttributeView.class);
        Optional<PosixFileAttributes> kept =
                old == null || !Files.exists(whole) ? Optional.empty() : Optional.of(old.readAttributes());
        try {
            Set<StandardOpenOption> anew = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            FileAttribute<?>[] hidden =
                    kept.isEmpty() ? new FileAttribute<?>[0] : new FileAttribute<?>[] {FOR_ME_ALONE};
            try (FileChannel channel = FileChannel.open(part, anew, hidden)) {
                content.into(Channels.newOutputStream(channel));
                channel.force(true);
            }
            if (kept.isPresent()) {
                keepReaders(part, kept.get());
            }
            // Any other way of moving takes the old file away first, and a crash or a reader finds none.
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            removeQuietly(part);
            throw e;
        }
        forceFolder(whole.getParent());
    }

    private static void keepReaders(Path part, PosixFileAttributes old) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        try {
            view.setGroup(old.group());
            view.setOwner(old.owner());
        } catch (IOException e) {
            // Only an administrator may give files away; whoever writes then owns what is written.
        }
        view.setPermissions(old.permissions());
    }

    /** The new name is safe only once its folder is; systems that cannot force a folder do so themselves. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The text itself is on the disk.
        }
    }

    static Phrase trouble(Path path, IOException e) {
        Object reason =
                e instanceof AccessDeniedException ? Words.phrase("trouble.readOnly") : JournalTrouble.reason(e);
        return Words.phrase("trouble.save", String.valueOf(path.getFileName()), reason);
    }

    private static void removeQuietly(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // What went wrong before is what has to be told.
        }
    }
}
