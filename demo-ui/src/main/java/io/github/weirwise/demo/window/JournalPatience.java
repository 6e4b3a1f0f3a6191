package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Phrase;
import java.util.function.Consumer;
import javax.swing.Timer;

/** Tells that an entry waits for a journal which another program holds, when it has waited for a moment, until it is over. */
final class JournalPatience {
    /** Longer than a slow disk takes. */
    private static final int MOMENT_MS = 1000;

    private final Timer moment;
    private final Runnable over;

    /**
     * Watches what is written to a desk's file.
     *
     * @param tell gets what is to be told
     * @param withdraw gets what need not be told any more
     */
    JournalPatience(FileDesk desk, Consumer<Phrase> tell, Consumer<Phrase> withdraw) {
        Phrase waiting =
                Words.phrase("trouble.waiting", String.valueOf(desk.path().getFileName()));
        moment = new Timer(MOMENT_MS, e -> tell.accept(waiting));
        moment.setRepeats(false);
        over = () -> withdraw.accept(waiting);
        desk.onBusy(this::busy);
    }

    private void busy(boolean on) {
        if (on) {
            moment.start();
        } else {
            moment.stop();
            over.run();
        }
    }
}
