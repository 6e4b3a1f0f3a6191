package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.report.Phrase;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** Keeps unfinished work while one is at it, and takes it up at the next start. */
final class Unfinished {
    private final Kept kept;
    private final Background background;
    private final Consumer<Phrase> trouble;
    private final Map<Kept.Work, Autosave> saves = new EnumMap<>(Kept.Work.class);

    Unfinished(Kept kept, Background background, Consumer<Phrase> trouble) {
        this.kept = kept;
        this.background = background;
        this.trouble = trouble;
    }

    /** Keeps a kind of work from now on; {@code state} is empty while there is nothing worth keeping. */
    void keep(Kept.Work work, Supplier<Optional<Supplier<String>>> state) {
        saves.put(work, new Autosave(kept, work, background, trouble, state));
    }

    /** Something has changed. */
    void changed(Kept.Work work) {
        Optional.ofNullable(saves.get(work)).ifPresent(Autosave::changed);
    }

    /** Takes up what was kept of a kind, if {@code reader} can make something of it; it reads off the event thread. */
    <T> void takeUp(Kept.Work work, Function<String, Optional<T>> reader, Consumer<T> taker) {
        background.run(() -> kept.found(work).flatMap(reader), found -> found.ifPresent(taker));
    }

    /** The work is done. */
    void forget(Kept.Work work) {
        kept.forget(work);
    }

    /** The window closes. */
    void close() {
        saves.values().forEach(Autosave::close);
    }
}
