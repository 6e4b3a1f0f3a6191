package io.github.weirwise.demo.desk;

import io.github.weirwise.json.DocumentException;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/**
 * What came of work on a journal's file.
 *
 * @param found what was wanted, if it succeeded
 * @param trouble what went wrong, in words, if it did not
 */
public record Attempt<T>(Optional<T> found, Optional<Phrase> trouble) {
    /** Tries it; takes as long as the disk takes. */
    public static <T> Attempt<T> of(Path path, Callable<T> work) {
        try {
            return new Attempt<>(Optional.of(work.call()), Optional.empty());
        } catch (DocumentException e) {
            return failed(JournalTrouble.document(path, e));
        } catch (IOException e) {
            return failed(JournalTrouble.opening(path, e));
        } catch (Exception e) {
            return failed(JournalTrouble.opening(path, new IOException(e.toString(), e)));
        }
    }

    private static <T> Attempt<T> failed(Phrase trouble) {
        return new Attempt<>(Optional.empty(), Optional.of(trouble));
    }

    /** Hands over whichever there is. */
    public void to(Consumer<T> then, Consumer<Phrase> tell) {
        found.ifPresent(then);
        trouble.ifPresent(tell);
    }
}
