package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.util.function.Consumer;
import javax.swing.Timer;

/** Tells that an entry waits for a journal which another program holds, when it has waited for a moment. */
final class JournalPatience {
    /** Longer than a slow disk takes. */
    static final int MOMENT_MS = 1000;

    private final Timer moment;

    /** Watches what is written to a desk's file. */
    JournalPatience(FileDesk desk, Consumer<Phrase> tell) {
        moment = new Timer(
                MOMENT_MS,
                e -> tell.accept(Words.phrase(
                        "trouble.waiting", String.valueOf(desk.path().getFileName()))));
        moment.setRepeats(false);
        desk.onBusy(this::busy);
    }

    private void busy(boolean on) {
        if (on) {
            moment.start();
        } else {
            moment.stop();
        }
    }
}
