package io.github.weirwise.demo.desk;

import io.github.weirwise.demo.look.Words;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** A journal file that could not be read or written, told as what it means and what to try. */
public final class JournalTrouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Parts of what Linux, macOS and Windows say (from memory). */
    private static final List<String> DISK_IS_FULL =
            List.of("no space left", "not enough space", "disk full", "disk quota exceeded");

    private final transient Phrase phrase;

    private JournalTrouble(Phrase phrase, Throwable cause) {
        super(Words.ENGLISH.say(phrase), cause);
        this.phrase = phrase;
    }

    static JournalTrouble writing(Path path, IOException cause) {
        return new JournalTrouble(of("trouble.write", path, cause), cause);
    }

    static JournalTrouble notTaken(Path path, DocumentException cause) {
        return new JournalTrouble(document(path, cause), cause);
    }

    static JournalTrouble changedElsewhere(Path path) {
        return new JournalTrouble(Words.phrase("trouble.changed", name(path)), null);
    }

    /** Why a journal could not be opened or begun. */
    static Phrase opening(Path path, IOException cause) {
        return of("trouble.open", path, cause);
    }

    /** Why a document is not a journal that can be read here. */
    static Phrase document(Path path, DocumentException cause) {
        return Words.phrase("trouble.document", name(path), cause.path(), cause.problemWords(), cause.tryThisWords());
    }

    private static Phrase of(String key, Path path, IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return Words.phrase("trouble.missing", name(path));
        }
        if (cause instanceof AccessDeniedException) {
            return Words.phrase("trouble.denied", name(path));
        }
        if (cause instanceof FileAlreadyExistsException there) {
            return Words.phrase("trouble.exists", name(Path.of(there.getFile())));
        }
        return Words.phrase(key, name(path), reason(cause));
    }

    /** In words, as far as the system's message can be told from others. */
    public static Object reason(IOException cause) {
        String message = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        String plain = message.toLowerCase(Locale.ROOT);
        return DISK_IS_FULL.stream().anyMatch(plain::contains) ? Words.phrase("trouble.full") : message;
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }

    public Phrase phrase() {
        return phrase;
    }
}
