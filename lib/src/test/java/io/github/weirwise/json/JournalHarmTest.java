package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What disks, editors and other programs do to a journal file: told, and never taken for what was written. */
class JournalHarmTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings SETTINGS = UNIT.ratedSettings(205);
    private static final List<JournalEntry> ENTRIES = List.of(
            Reading.of(START, new Observation.FunnelLevel(9.5), new Observation.CupVolume(30, 24, true)),
            new Note(START.plusSeconds(180), "fed at 07:50"));

    @TempDir
    Path folder;

    private Path path;
    private JournalFile file;

    @BeforeEach
    void begin() throws IOException {
        path = folder.resolve("tank-4.jsonl");
        file = JournalFile.create(path, UNIT, SETTINGS);
        for (JournalEntry entry : ENTRIES) {
            file.append(entry);
        }
    }

    /** Every fifth bit of the file, one at a time, which is every place of a byte. */
    @Test
    void noFlippedBitChangesAValueSilently() throws IOException {
        byte[] whole = Files.readAllBytes(path);
        JournalContents sound = file.read();
        int silent = 0;
        int unopenable = 0;
        for (int bit = 0; bit < 8 * whole.length; bit += 5) {
            byte[] harmed = whole.clone();
            harmed[bit / 8] ^= (byte) (1 << bit % 8);
            Files.write(path, harmed);
            try {
                JournalContents read = file.read();
                boolean same = read.journal().equals(sound.journal())
                        && read.unit().equals(sound.unit())
                        && read.settings().equals(sound.settings());
                silent += !same && read.spoilt().isEmpty() ? 1 : 0;
            } catch (DocumentException e) {
                unopenable++;
            }
        }
        assertThat(silent).as("changed without a word").isZero();
        assertThat(unopenable).as("lost with its header").isZero();
    }

    @Test
    void aJournalWhoseFirstLineIsBrokenStillOpens() throws IOException {
        List<String> lines = Files.readAllLines(path);
        lines.set(0, "{\"version\":2,\"unit\":" + "x".repeat(200));
        Files.write(path, lines);
        JournalContents read = JournalFile.open(path).read();
        assertThat(read.unit()).isEqualTo(UNIT);
        assertThat(read.settings()).isEqualTo(SETTINGS);
        assertThat(read.journal().entries()).isEqualTo(ENTRIES);
        assertThat(read.spoilt()).extracting(SpoiltLine::number).containsExactly(1);
    }

    @Test
    void aFileThatIsLockedDoesNotHoldUpAnother() throws Exception {
        Path other = folder.resolve("tank-5.jsonl");
        JournalFile.create(other, UNIT, SETTINGS);
        CompletableFuture<Void> waiting;
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            assertThat(held.isValid()).isTrue();
            waiting = append(path, "waits for its file");
            TimeUnit.MILLISECONDS.sleep(200);
            append(other, "does not wait").get(60, TimeUnit.SECONDS);
            assertThat(waiting).isNotDone();
        }
        waiting.get(60, TimeUnit.SECONDS);
        assertThat(file.read().journal().entries()).hasSize(ENTRIES.size() + 1);
    }

    @Test
    void anEntryThatWaitedGoesIntoTheFileThatIsThereNow() throws Exception {
        CompletableFuture<Void> waiting;
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            assertThat(held.isValid()).isTrue();
            waiting = append(path, "came while the file was replaced");
            TimeUnit.MILLISECONDS.sleep(200);
            Path copy = folder.resolve("copy");
            Files.copy(path, copy);
            Files.writeString(copy, "{\"type\":\"note\",\"at\":\"20", StandardOpenOption.APPEND);
            Files.move(copy, path, StandardCopyOption.REPLACE_EXISTING);
        }
        waiting.get(60, TimeUnit.SECONDS);
        JournalContents read = file.read();
        assertThat(read.journal().all(Note.class)).extracting(Note::text).contains("came while the file was replaced");
        assertThat(read.spoilt()).as("the torn end of the new file").isEmpty();
    }

    @Test
    void millionsOfSpoiltLinesDoNotExhaustTheMemory() throws IOException {
        Files.writeString(path, "x\n".repeat(1_000_000), StandardOpenOption.APPEND);
        file.append(new Note(START.plusSeconds(999), "behind them"));
        long before = usedMb();
        JournalContents read = file.read();
        assertThat(usedMb() - before).as("MB held").isLessThan(20);
        assertThat(read.spoilt()).hasSizeLessThanOrEqualTo(1001);
        assertThat(read.journal().entries()).hasSize(ENTRIES.size() + 1);
    }

    @Test
    void aJournalWithoutAnyHeaderCanBeSalvaged() throws IOException {
        List<String> lines = Files.readAllLines(path);
        Files.write(path, lines.subList(3, lines.size()));
        assertThatThrownBy(() -> JournalFile.open(path))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("salvage");
        JournalContents read = JournalFile.salvage(path, UNIT, SETTINGS);
        assertThat(read.journal().entries()).isEqualTo(ENTRIES);
        assertThat(read.settings()).isEqualTo(SETTINGS);
    }

    @Test
    void aLineThatSomebodyEditedIsToldWithWhatToDo() throws IOException {
        Files.writeString(path, Files.readString(path).replace("\"mm\":9.5", "\"mm\":95"));
        JournalContents read = file.read();
        assertThat(read.journal().entries()).isEqualTo(ENTRIES.subList(1, 2));
        assertThat(read.spoilt())
                .singleElement()
                .satisfies(line -> assertThat(line.problem()).contains("check", "changed after it was written"));
        Files.writeString(path, Files.readString(path).replaceAll("(\"mm\":95.*),\"check\":\"[0-9a-f]{8}\"", "$1"));
        assertThat(file.read().journal().entries()).hasSize(2);
    }

    @Test
    void anEntrySentTwiceCountsOnceAndACorrectionReplacesIt() throws IOException {
        Note note = new Note(START.plusSeconds(300), "cup emptied");
        file.append(note, "visit-7/3");
        file.append(note, "visit-7/3");
        assertThat(file.read().journal().all(Note.class)).hasSize(2);
        file.append(new Note(START.plusSeconds(300), "cup emptied and rinsed"), "visit-7/3");
        assertThat(file.read().journal().all(Note.class)).extracting(Note::text).contains("cup emptied and rinsed");
        assertThat(file.read().journal().all(Note.class)).hasSize(2);
        file.append(note);
        file.append(note);
        assertThat(file.read().journal().all(Note.class))
                .as("without identifiers two are two")
                .hasSize(4);
        assertThatThrownBy(() -> file.append(note, " ")).isInstanceOf(DocumentException.class);
        assertThatThrownBy(() -> file.append(note, "x".repeat(101))).isInstanceOf(DocumentException.class);
    }

    @Test
    void theSameHoldsForTheJournalOfADocument() {
        String note = "{\"type\":\"note\",\"at\":\"2026-03-01T08:00:00Z\",\"text\":\"fed\",\"id\":\"a1\"}";
        String document = "{\"version\":2,\"entries\":[" + note + "," + note.replace("fed", "fed late") + "]}";
        assertThat(WeirwiseJson.readJournal(document).all(Note.class))
                .extracting(Note::text)
                .containsExactly("fed late");
        assertThatThrownBy(() -> WeirwiseJson.readJournal(document.replace("a1", " ")))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("$.entries[0].id");
    }

    @Test
    void aSecondHeaderOfAnotherJournalIsTold() throws IOException {
        Path other = folder.resolve("other.jsonl");
        JournalFile.create(other, UNIT, UNIT.ratedSettings(199));
        Files.write(path, Files.readAllBytes(other), StandardOpenOption.APPEND);
        JournalContents read = file.read();
        assertThat(read.settings()).isEqualTo(SETTINGS);
        assertThat(read.spoilt())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line.problem()).contains("another journal"));
    }

    private static long usedMb() {
        System.gc();
        return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20;
    }

    /** In a thread of its own: a pool of a small machine may have but one, and that one waits. */
    private static CompletableFuture<Void> append(Path path, String text) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        JournalFile.open(path).append(new Note(START.plusSeconds(900), text));
                    } catch (IOException e) {
                        throw new IllegalStateException(e);
                    }
                },
                work -> new Thread(work).start());
    }
}
