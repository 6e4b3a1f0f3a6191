package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Attempt;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Phrase;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Timer;

/** Looks at an open journal file now and then, off the event thread, and takes over what another program added. */
final class JournalWatch {
    private static final int EVERY_MS = 3000;

    private final Background background;
    private final Consumer<Phrase> tell;
    private final Timer timer = new Timer(EVERY_MS, e -> look());
    private Optional<FileDesk> desk = Optional.empty();
    private boolean looking;
    private boolean lost;

    JournalWatch(Background background, Consumer<Phrase> tell) {
        this.background = background;
        this.tell = tell;
    }

    /** Watches this journal from now on, and no other; none when it is empty. */
    void watch(Optional<FileDesk> other) {
        desk = other;
        lost = false;
        if (other.isPresent()) {
            timer.start();
        } else {
            timer.stop();
        }
    }

    /** Looks once; what was noted here while it was reading makes what it read too old to take. */
    void look() {
        if (looking || desk.isEmpty() || desk.get().busy()) {
            return;
        }
        FileDesk at = desk.get();
        Journal before = at.journal();
        looking = true;
        background.run(() -> Attempt.of(at.path(), at::onDisk), found -> {
            looking = false;
            if (desk.filter(now -> now == at).isPresent() && !at.busy() && before.equals(at.journal())) {
                take(at, found);
            }
        });
    }

    /** That the file is gone is told once, not every three seconds. */
    private void take(FileDesk at, Attempt<Journal> attempt) {
        if (attempt.found().isPresent()) {
            lost = false;
            int before = at.journal().entries().size();
            if (at.takeOver(attempt.found().get())) {
                int added = at.journal().entries().size() - before;
                tell.accept(Words.phrase(
                        "trouble.takenOver", String.valueOf(at.path().getFileName()), added));
            }
        } else if (!lost) {
            lost = true;
            attempt.trouble().ifPresent(tell);
        }
    }
}
