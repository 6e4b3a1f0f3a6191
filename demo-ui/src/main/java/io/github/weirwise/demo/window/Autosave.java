package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.report.Phrase;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.Timer;

/** Keeps a piece of work a moment after each change, off the event thread; many changes in a moment are kept once. */
final class Autosave {
    private static final int MOMENT_MS = 2000;

    private final Kept kept;
    private final Kept.Work work;
    private final Background background;
    private final Consumer<Phrase> trouble;
    private final Supplier<Optional<Supplier<String>>> state;
    private final Timer moment = new Timer(MOMENT_MS, e -> write());
    private boolean told;

    /** @param state the work now as something that gives its text; empty when there is nothing worth keeping */
    Autosave(
            Kept kept,
            Kept.Work work,
            Background background,
            Consumer<Phrase> trouble,
            Supplier<Optional<Supplier<String>>> state) {
        this.kept = kept;
        this.work = work;
        this.background = background;
        this.trouble = trouble;
        this.state = state;
        moment.setRepeats(false);
    }

    /** Something has changed. */
    void changed() {
        if (!moment.isRunning()) {
            moment.start();
        }
    }

    private void write() {
        state.get().ifPresent(text -> background.run(() -> kept.keep(work, text.get()), this::tell));
    }

    /** That the folder cannot be written is told once, not every two seconds. */
    private void tell(Optional<Phrase> failure) {
        if (failure.isPresent() && !told) {
            told = true;
            trouble.accept(failure.get());
        }
    }

    /** The window closes: what has not been kept yet is kept at once. */
    void close() {
        if (moment.isRunning()) {
            moment.stop();
            state.get().ifPresent(text -> kept.keep(work, text.get()));
        }
    }
}
