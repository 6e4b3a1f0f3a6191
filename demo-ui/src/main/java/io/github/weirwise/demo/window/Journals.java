package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Attempt;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.reading.Note;
import io.github.weirwise.report.Phrase;
import java.nio.file.Path;
import java.time.Clock;
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
        background.run(() -> Attempt.of(path, work), attempt -> attempt.to(opened, trouble));
    }
}
