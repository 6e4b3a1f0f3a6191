package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.report.Phrase;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** Keeps unfinished work while one is at it, and offers it again at the next start. */
final class Unfinished {
    private final Kept kept;
    private final Background background;
    private final OfferBar bar;
    private final Consumer<Phrase> trouble;
    private final Map<Kept.Work, Autosave> saves = new EnumMap<>(Kept.Work.class);
    private final Set<Kept.Work> unanswered = EnumSet.noneOf(Kept.Work.class);

    Unfinished(Kept kept, Background background, OfferBar bar, Consumer<Phrase> trouble) {
        this.kept = kept;
        this.background = background;
        this.bar = bar;
        this.trouble = trouble;
    }

    /** Keeps a kind of work from now on; {@code state} is empty while there is nothing worth keeping. */
    void keep(Kept.Work work, Supplier<Optional<Supplier<String>>> state) {
        saves.put(work, new Autosave(kept, work, background, trouble, state));
    }

    /** Something has changed; while an older piece is on offer it is not written over. */
    void changed(Kept.Work work) {
        Autosave save = saves.get(work);
        if (save != null && !unanswered.contains(work)) {
            save.changed();
        }
    }

    /** What can be taken up again, and how it is called. */
    record Found(Phrase words, Runnable take) {}

    /** Offers what was kept of a kind, if {@code reader} can make something of it; it reads off the event thread. */
    void offer(Kept.Work work, Function<String, Optional<Found>> reader) {
        background.run(
                () -> kept.found(work).flatMap(reader),
                found -> found.ifPresent(there -> {
                    unanswered.add(work);
                    bar.offer(new OfferBar.Offer(
                            there.words(),
                            () -> {
                                unanswered.remove(work);
                                there.take().run();
                            },
                            () -> {
                                unanswered.remove(work);
                                forget(work);
                            }));
                }));
    }

    /** The work is done or was left. */
    void forget(Kept.Work work) {
        if (!unanswered.contains(work)) {
            kept.forget(work);
        }
    }

    /** The window closes. */
    void close() {
        saves.values().forEach(Autosave::close);
    }
}
