package io.github.weirwise.demo.window;

import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The folder in which unfinished work is kept from one start of the window to the next.
 *
 * @param folder made when first needed
 */
public record Kept(Path folder) {
    private static final long MOST_BYTES = 20_000_000;

    /** What may be kept. */
    enum Work {
        TANK("tank.json"),
        JOURNALS("journals.txt"),
        PRACTICE("practice.json");

        private final String file;

        Work(String file) {
            this.file = file;
        }
    }

    /** In the home folder of whoever is at work. */
    public static Kept usual() {
        return new Kept(Path.of(System.getProperty("user.home", "."), ".weirwise"));
    }

    /** Writes it whole or not at all; gives what went wrong, if anything. */
    Optional<Phrase> keep(Work work, String text) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            return Optional.of(SavedText.trouble(folder, e));
        }
        return SavedText.write(folder.resolve(work.file), text);
    }

    /** What was kept; empty when there is nothing that can be read. */
    Optional<String> found(Work work) {
        Path file = folder.resolve(work.file);
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** No longer keeps it. */
    void forget(Work work) {
        try {
            Files.deleteIfExists(folder.resolve(work.file));
        } catch (IOException e) {
            // It is offered once more, and can be left then.
        }
    }
}
