package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.report.Phrase;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** Journals and other files that the window opens, begins, watches and saves. */
final class Papers {
    private final Background background;
    private final Asking asking;
    private final Journals journals;
    private final JournalWatch watch;
    private final Consumer<Phrase> tell;
    private Supplier<Map<String, String>> unitKept = Map::of;
    private Consumer<Map<String, String>> unitTyped = typed -> {};

    Papers(Background background, Asking asking, Consumer<FileDesk> opened, Consumer<Phrase> tell) {
        this.background = background;
        this.asking = asking;
        this.tell = tell;
        journals = new Journals(background, opened, tell, Clock.systemDefaultZone());
        watch = new JournalWatch(background, tell);
    }

    /** What was typed for a new unit is taken from here and given there. */
    void draftOfUnit(Supplier<Map<String, String>> kept, Consumer<Map<String, String>> typed) {
        unitKept = kept;
        unitTyped = typed;
    }

    /** Asks for a unit, again and again until it can be taken, and for a place, and begins a journal there. */
    void begin(Dress dress) {
        UnitForm form = new UnitForm(dress);
        form.again(unitKept.get());
        form.onTyped(() -> unitTyped.accept(form.kept()));
        while (asking.describe(form, dress)) {
            Optional<UnitForm.Filled> filled = form.filled();
            if (filled.isPresent()) {
                asking.journalToBegin(filled.get().unit().name(), dress)
                        .ifPresent(path -> journals.begin(path, filled.get()));
                return;
            }
        }
    }

    /** Asks for a journal and opens it. */
    void open(Dress dress) {
        asking.journalToOpen(dress).ifPresent(journals::open);
    }

    /** Opens a journal. */
    void open(Path path) {
        journals.open(path);
    }

    /** Watches the file of the desk that is tuned at, if it has one. */
    void watch(Desk desk) {
        watch.watch(Optional.of(desk).filter(FileDesk.class::isInstance).map(FileDesk.class::cast));
    }

    /** Looks at the watched file now. */
    void look() {
        watch.look();
    }

    private record Read<T>(Optional<T> content, Optional<Phrase> trouble) {}

    /**
     * Asks for a document, reads it off the event thread and hands over what is in it.
     *
     * @param troubleKey text that tells what is wrong with it: file, path, problem, what to try
     */
    <T> void document(Function<String, T> reader, String troubleKey, Consumer<T> then, Dress dress) {
        asking.documentToOpen(dress)
                .ifPresent(path -> background.run(() -> read(path, reader, troubleKey), found -> {
                    found.content().ifPresent(then);
                    found.trouble().ifPresent(tell);
                }));
    }

    private static <T> Read<T> read(Path path, Function<String, T> reader, String troubleKey) {
        String name = String.valueOf(path.getFileName());
        try {
            return new Read<>(
                    Optional.of(reader.apply(Files.readString(path, StandardCharsets.UTF_8))), Optional.empty());
        } catch (DocumentException e) {
            return new Read<>(
                    Optional.empty(),
                    Optional.of(Words.phrase(troubleKey, name, e.path(), e.problemWords(), e.tryThisWords())));
        } catch (IOException e) {
            return new Read<>(Optional.empty(), Optional.of(unread(name, e)));
        }
    }

    private static Phrase unread(String name, IOException e) {
        if (e instanceof NoSuchFileException) {
            return Words.phrase("trouble.missing", name);
        }
        Object reason = e instanceof CharacterCodingException ? Words.phrase("trouble.noText") : e.getMessage();
        return Words.phrase(
                "trouble.unread", name, reason == null ? e.getClass().getSimpleName() : reason);
    }

    /** Writes a text off the event thread to where a person wants it. */
    void save(String suggestedName, Supplier<String> text, Dress dress) {
        String written = text.get();
        asking.fileToSave(suggestedName, dress)
                .ifPresent(path ->
                        background.run(() -> SavedText.write(path, written), failure -> failure.ifPresent(tell)));
    }
}
