package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.json.JournalContents;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real unit with its journal on disk. */
class FileDeskTest {
    private static final SkimmerUnit UNIT = LanternQuay.jetty();
    private static final Settings SETTINGS = UNIT.ratedSettings(193);
    private static final Instant NOW = Instant.parse("2026-05-04T09:30:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path path;
    private FileDesk desk;

    @BeforeEach
    void begin() throws IOException {
        path = folder.resolve("unit.jsonl");
        desk = FileDesk.create(path, UNIT, SETTINGS, CLOCK);
    }

    private List<JournalEntry> onDisk() throws IOException {
        return JournalFile.open(path).read().journal().entries();
    }

    @Test
    void whatIsNotedIsOnDiskBeforeItCounts() throws IOException {
        Reading reading = Reading.of(NOW, new Observation.FunnelLevel(9));
        desk.note(reading);
        assertThat(onDisk()).containsExactly(reading);
        assertThat(FileDesk.open(path, CLOCK).journal()).isEqualTo(desk.journal());
    }

    @Test
    void undoTakesTheNewestLineFromTheFile() throws IOException {
        Note first = new Note(NOW, "first");
        desk.note(first);
        desk.note(new Note(NOW, "wrong"));
        desk.undo();
        assertThat(onDisk()).containsExactly(first);
        assertThat(desk.journal().entries()).containsExactly(first);
    }

    @Test
    void undoNeverTakesWhatAnotherProgramAdded() throws IOException {
        List<Phrase> told = new ArrayList<>();
        desk.onTrouble(told::add);
        desk.note(new Note(NOW, "mine"));
        JournalFile.open(path).append(new Note(NOW, "theirs"));
        desk.undo();
        assertThat(onDisk()).hasSize(2);
        assertThat(told).hasSize(1);
        assertThat(told.get(0).key()).isEqualTo("demo.trouble.changed");
    }

    @Test
    void whatCannotBeWrittenDoesNotCountAndIsTold() throws IOException {
        List<Phrase> told = new ArrayList<>();
        desk.onTrouble(told::add);
        Files.delete(path);
        Files.createDirectory(path);
        desk.note(new Note(NOW, "lost"));
        assertThat(desk.journal().entries()).isEmpty();
        assertThat(told).hasSize(1);
    }

    @Test
    void whatAnotherProgramAddedIsTakenOver() throws IOException {
        JournalFile.open(path).append(new Note(NOW, "theirs"));
        assertThat(desk.takeOver(desk.onDisk())).isTrue();
        assertThat(desk.journal().entries()).containsExactly(new Note(NOW, "theirs"));
        assertThat(desk.takeOver(desk.onDisk())).isFalse();
    }

    @Test
    void theAdvisedStepIsNotedWhenItWasDone() throws IOException {
        // One dry cup is read again, two ask for a change or a look.
        desk.note(Reading.of(
                NOW.minusSeconds(86400), new Observation.FunnelLevel(9), new Observation.CupVolume(25, 24, false)));
        desk.note(Reading.of(
                NOW.minusSeconds(60), new Observation.FunnelLevel(9), new Observation.CupVolume(25, 24, false)));
        desk.advised(Weirwise.advise(UNIT, SETTINGS, desk.journal(), NOW));
        desk.takeStep();
        boolean moved = desk.journal().last(WeirMove.class).isPresent();
        boolean looked =
                desk.advice().map(given -> given.step() instanceof Step.Look).orElse(true);
        assertThat(moved || looked).isTrue();
        assertThat(onDisk()).hasSize(desk.journal().entries().size());
    }

    /** A desk whose file cannot be written for a reason. */
    private FileDesk failing(IOException why) throws IOException {
        JournalFile file = mock(JournalFile.class);
        when(file.path()).thenReturn(path);
        doThrow(why).when(file).append(any());
        doThrow(why).when(file).withdraw(any());
        Journal one = new Journal(List.of(new Note(NOW, "before")));
        return new FileDesk(file, new JournalContents(UNIT, SETTINGS, one, List.of()), CLOCK);
    }

    @Test
    void aFullDiskIsToldInWordsAndNothingOfTheRestIsWritten() throws IOException {
        FileDesk full = failing(new IOException("No space left on device"));
        List<String> told = new ArrayList<>();
        full.onTrouble(phrase -> told.add(Words.ENGLISH.say(phrase)));
        List<String> done = new ArrayList<>();
        full.note(List.of(new Note(NOW, "one"), new Note(NOW, "two")), () -> done.add("noted"));
        assertThat(told).singleElement().asString().contains("the disk is full", "Nothing was noted");
        assertThat(done).isEmpty();
        assertThat(full.journal().entries()).containsExactly(new Note(NOW, "before"));
        full.undo();
        assertThat(told).hasSize(2);
        assertThat(full.journal().entries()).containsExactly(new Note(NOW, "before"));
        assertThat(full.busy()).isFalse();
    }

    @Test
    void aReadOnlyFolderIsToldInWords() throws IOException {
        FileDesk readOnly = failing(new AccessDeniedException(path.toString()));
        List<String> told = new ArrayList<>();
        readOnly.onTrouble(phrase -> told.add(Words.ENGLISH.say(phrase)));
        readOnly.note(new Note(NOW, "one"));
        assertThat(told).singleElement().asString().contains("read-only", "folder of your own");
    }

    @Test
    void aJournalThatAnotherProgramHoldsKeepsNobodyWaitingHere() throws Exception {
        BlockingQueue<Runnable> events = new LinkedBlockingQueue<>();
        desk.writeIn(new Background() {
            @Override
            public <T> void run(Supplier<T> work, Consumer<T> then) {
                new Thread(() -> {
                            T made = work.get();
                            events.add(() -> then.accept(made));
                        })
                        .start();
            }

            @Override
            public void soon(Runnable piece) {
                events.add(piece);
            }
        });
        try (FileChannel other = FileChannel.open(path, StandardOpenOption.WRITE);
                FileLock held = other.lock(Long.MAX_VALUE - 1, 1, false)) {
            long start = System.nanoTime();
            desk.note(new Note(NOW, "first"));
            desk.note(new Note(NOW, "second"));
            desk.undo();
            desk.takeStep();
            assertThat((System.nanoTime() - start) / 1e6)
                    .as("ms on the event thread")
                    .isLessThan(200);
            assertThat(held.isValid()).isTrue();
            assertThat(desk.busy()).isTrue();
            assertThat(events.poll(300, TimeUnit.MILLISECONDS)).as("it waits").isNull();
            assertThat(desk.journal().entries()).isEmpty();
        }
        while (desk.busy()) {
            events.poll(10, TimeUnit.SECONDS).run();
        }
        assertThat(onDisk()).containsExactly(new Note(NOW, "first"), new Note(NOW, "second"));
        assertThat(desk.journal().entries()).isEqualTo(onDisk());
    }
}
