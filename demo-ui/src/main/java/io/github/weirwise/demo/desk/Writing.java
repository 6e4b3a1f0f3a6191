package io.github.weirwise.demo.desk;

import io.github.weirwise.report.Phrase;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Writes to a journal one thing after another, away from the event thread, because a disk may be slow and a journal may be
 * locked by another program. What comes of each writing is handed over on the event thread, in order.
 */
final class Writing {
    /**
     * One piece of writing.
     *
     * @param write done on any thread; throws {@link JournalTrouble} when it cannot be written
     * @param then follows on the event thread
     * @param failed gets what went wrong, on the event thread
     */
    record Piece(Runnable write, Runnable then, Consumer<Phrase> failed) {}

    private final Deque<Piece> waiting = new ArrayDeque<>();
    private Background background = Background.AT_ONCE;
    private Consumer<Boolean> busyListener = busy -> {};
    private boolean busy;

    /** Where it is written from now on. */
    void in(Background other) {
        background = other;
    }

    /** Tells this whenever writing begins or has ended. */
    void onBusy(Consumer<Boolean> listener) {
        busyListener = listener;
    }

    /** Whether something is being written. */
    boolean busy() {
        return busy;
    }

    /** Writes these when their turn comes. */
    void add(List<Piece> pieces) {
        waiting.addAll(pieces);
        if (!busy) {
            next();
        }
    }

    /** Leaves out what has not been begun; for when what came before it could not be written. */
    void leaveTheRest() {
        waiting.clear();
    }

    private void next() {
        Piece piece = waiting.poll();
        if (piece == null) {
            return;
        }
        busy = true;
        busyListener.accept(true);
        Supplier<Optional<Phrase>> work = () -> attempt(piece.write());
        background.run(work, trouble -> {
            busy = false;
            trouble.ifPresentOrElse(piece.failed(), piece.then());
            if (!busy) {
                busyListener.accept(false);
                next();
            }
        });
    }

    private static Optional<Phrase> attempt(Runnable write) {
        try {
            write.run();
            return Optional.empty();
        } catch (JournalTrouble e) {
            return Optional.of(e.phrase());
        }
    }
}
