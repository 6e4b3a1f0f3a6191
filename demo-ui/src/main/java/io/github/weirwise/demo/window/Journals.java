package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.JournalTrouble;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.reading.Note;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Opens and begins journal files off the event thread, and tells what went wrong in words. */
final class Journals {
    private final Background background;
    private final Consumer<FileDesk> opened;
    private final Consumer<Phrase> trouble;
    private final Clock clock;

    Journals(Background background, Consumer<FileDesk> opened, Consumer<Phrase> trouble, Clock clock) {
        this.background = background;
        this.opened = opened;
        this.trouble = trouble;
        this.clock = clock;
    }

    private record Result(Optional<FileDesk> desk, Optional<Phrase> trouble) {}

    void open(Path path) {
        run(path, () -> FileDesk.open(path, clock));
    }

    void begin(Path path, UnitForm.Filled filled) {
        run(path, () -> {
            FileDesk desk = FileDesk.create(path, filled.unit(), filled.settings(), clock);
            if (!filled.assumed().isEmpty()) {
                desk.note(new Note(desk.now(), filled.assumed()));
            }
            return desk;
        });
    }

    private void run(Path path, Callable<FileDesk> work) {
        background.run(() -> result(path, work), result -> {
            result.desk().ifPresent(opened);
            result.trouble().ifPresent(trouble);
        });
    }

    private static Result result(Path path, Callable<FileDesk> work) {
        try {
            return new Result(Optional.of(work.call()), Optional.empty());
        } catch (DocumentException e) {
            return new Result(Optional.empty(), Optional.of(JournalTrouble.document(path, e)));
        } catch (IOException e) {
            return new Result(Optional.empty(), Optional.of(JournalTrouble.opening(path, e)));
        } catch (Exception e) {
            return new Result(
                    Optional.empty(), Optional.of(JournalTrouble.opening(path, new IOException(e.toString(), e))));
        }
    }
}
