package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalFileTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final SkimmerUnit UNIT = FirstRoundUnits.middle();
    private static final Settings SETTINGS = UNIT.ratedSettings(205);
    private static final List<JournalEntry> ENTRIES = List.of(
            new Happening(START, Happening.Kind.FIRST_START),
            Reading.of(START.plusSeconds(60), new Observation.FunnelLevel(9), new Observation.CupVolume(30, 24, true)),
            new AdviceGiven(START.plusSeconds(90), "Raise the weir by 3 mm.", AdviceGiven.Followed.OPEN),
            new WeirMove(START.plusSeconds(120), 208, false),
            new Note(START.plusSeconds(180), "Zweite Pumpe läuft: \u6c34\nnext line \uD83D\uDC1F"));

    @TempDir
    Path folder;

    private Path path;

    @BeforeEach
    void name() {
        path = folder.resolve("tank-4.jsonl");
    }

    @Test
    void whatIsAppendedIsReadAgain() throws IOException {
        JournalContents contents = full().read();
        assertThat(contents.unit()).isEqualTo(UNIT);
        assertThat(contents.settings()).isEqualTo(SETTINGS);
        assertThat(contents.journal().entries()).isEqualTo(ENTRIES);
        assertThat(contents.spoilt()).isEmpty();
        assertThat(Files.readAllLines(path)).hasSize(3 + ENTRIES.size());
        assertThat(names()).containsExactly("tank-4.jsonl");
    }

    @Test
    void theNewestLineCanBeTakenBackAndNoOther() throws IOException {
        JournalFile file = full();
        assertThat(file.withdraw(ENTRIES.get(0))).isFalse();
        assertThat(file.withdraw(ENTRIES.get(ENTRIES.size() - 1))).isTrue();
        assertThat(file.read().journal().entries()).isEqualTo(ENTRIES.subList(0, ENTRIES.size() - 1));
        assertThat(Files.readString(file.sideFile())).contains("Zweite Pumpe");
        file.append(ENTRIES.get(ENTRIES.size() - 1));
        assertThat(file.read().journal().entries()).isEqualTo(ENTRIES);
    }

    @Test
    void theJournalFileOfVersion1IsStillRead() throws IOException {
        Files.writeString(path, Fixtures.text("journal-file.jsonl"));
        JournalContents contents = JournalFile.open(path).read();
        assertThat(contents.spoilt()).isEmpty();
        assertThat(contents.journal()).isEqualTo(WeirwiseJson.readJournal(Fixtures.text("journal.json")));
        assertThat(contents.unit()).isEqualTo(WeirwiseJson.readUnit(Fixtures.text("unit.json")));
    }

    @Test
    void aCrashAtAnyByteOfTheLastLineLosesNoOtherLine() throws IOException {
        full();
        byte[] whole = Files.readAllBytes(path);
        int lastLine = startOfLastLine(whole);
        List<JournalEntry> kept = ENTRIES.subList(0, ENTRIES.size() - 1);
        Note next = new Note(START.plusSeconds(999), "after the crash");
        for (int length = lastLine; length < whole.length; length++) {
            Files.write(path, Arrays.copyOf(whole, length));
            Files.deleteIfExists(JournalFile.open(path).sideFile());
            boolean onlyTheLineEndIsMissing = length == whole.length - 1;
            boolean torn = length > lastLine && !onlyTheLineEndIsMissing;

            JournalContents found = JournalFile.open(path).read();
            assertThat(found.journal().entries()).isEqualTo(onlyTheLineEndIsMissing ? ENTRIES : kept);
            assertThat(found.spoilt()).hasSize(torn ? 1 : 0).allMatch(SpoiltLine::torn);
            assertThat(Files.size(path)).isEqualTo(length);

            JournalFile.open(path).append(next);
            JournalContents mended = JournalFile.open(path).read();
            assertThat(mended.spoilt()).isEmpty();
            assertThat(mended.journal().entries())
                    .startsWith(kept.toArray(JournalEntry[]::new))
                    .endsWith(next)
                    .hasSize(kept.size() + (onlyTheLineEndIsMissing ? 2 : 1));
            assertThat(Files.exists(JournalFile.open(path).sideFile())).isEqualTo(torn);
            if (torn) {
                byte[] aside = Files.readAllBytes(JournalFile.open(path).sideFile());
                assertThat(Arrays.copyOf(aside, aside.length - 1))
                        .isEqualTo(Arrays.copyOfRange(whole, lastLine, length));
            }
        }
    }

    @Test
    void aCrashAtAnyByteOfTheHeaderCanBeBegunAgain() throws IOException {
        JournalFile.create(path, UNIT, SETTINGS);
        String lines = Files.readString(path);
        byte[] header = lines.substring(0, lines.indexOf('\n') + 1).getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < header.length - 1; length += 29) {
            Files.write(path, Arrays.copyOf(header, length));
            assertThatThrownBy(() -> JournalFile.open(path)).isInstanceOf(DocumentException.class);
            JournalFile file = JournalFile.create(path, UNIT, SETTINGS);
            file.append(ENTRIES.get(0));
            assertThat(file.read().journal().entries()).containsExactly(ENTRIES.get(0));
        }
        Files.write(path, Arrays.copyOf(header, header.length - 1));
        JournalFile file = JournalFile.open(path);
        file.append(ENTRIES.get(0));
        assertThat(file.read().journal().entries()).containsExactly(ENTRIES.get(0));
    }

    @Test
    void aLineThatWasSpoiltByHandIsReportedAndLeftAlone() throws IOException {
        full();
        List<String> lines = Files.readAllLines(path);
        lines.set(4, lines.get(4).replace("\"ml\":", "\"litres\":").replaceAll(",\"check\":\".*\"", ""));
        lines.add(6, "\u0000\u0000 what is this");
        lines.add(7, "");
        Files.write(path, lines);
        JournalFile file = JournalFile.open(path);
        assertThat(file.read().spoilt()).extracting(SpoiltLine::number).containsExactly(5, 7);
        assertThat(file.read().spoilt()).noneMatch(SpoiltLine::torn);
        assertThat(file.read().spoilt().get(0).problem()).contains("$.observations[1].litres", "ml, hours, full");
        file.append(new Note(START.plusSeconds(500), "later"));
        assertThat(file.read().journal().entries()).hasSize(ENTRIES.size());
        assertThat(Files.readAllLines(path)).startsWith(lines.toArray(String[]::new));
        assertThat(names()).containsExactly("tank-4.jsonl");
    }

    @Test
    void bytesThatAreNotUtf8AreASpoiltLine() throws IOException {
        full();
        String line = "{\"type\":\"note\",\"at\":\"2026-03-01T08:00:00Z\",\"text\":\"\u00ff\"}\n";
        Files.write(path, line.getBytes(StandardCharsets.ISO_8859_1), StandardOpenOption.APPEND);
        assertThat(JournalFile.open(path).read().spoilt())
                .singleElement()
                .satisfies(spoilt -> assertThat(spoilt.problem()).contains("UTF-8"));
    }

    @Test
    void zerosAtTheEndAsAPowerCutLeavesThemAreKeptAside() throws IOException {
        JournalFile file = full();
        Files.write(path, new byte[5000], StandardOpenOption.APPEND);
        assertThat(file.read().spoilt()).singleElement().matches(SpoiltLine::torn);
        file.append(new Note(START.plusSeconds(500), "power is back"));
        assertThat(file.read().journal().entries()).hasSize(ENTRIES.size() + 1);
        assertThat(Files.size(file.sideFile())).isEqualTo(5001);
    }

    @Test
    void windowsLineEndsAreRead() throws IOException {
        full();
        Files.writeString(path, Files.readString(path).replace("\n", "\r\n"));
        assertThat(JournalFile.open(path).read().journal().entries()).isEqualTo(ENTRIES);
    }

    @Test
    void nothingThatExistsIsOverwritten() throws IOException {
        full();
        assertThatThrownBy(() -> JournalFile.create(path, UNIT, SETTINGS))
                .isInstanceOf(FileAlreadyExistsException.class);
        Path other = Files.writeString(folder.resolve("letter.txt"), "Dear keeper");
        assertThatThrownBy(() -> JournalFile.create(other, UNIT, SETTINGS))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(other).hasContent("Dear keeper");
        assertThatThrownBy(() -> JournalFile.open(other))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("line 1, $");
        assertThatThrownBy(() -> JournalFile.open(folder.resolve("none"))).isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void whatCouldNotBeReadAgainIsNotWritten() throws IOException {
        JournalFile file = full();
        long size = Files.size(path);
        for (JournalEntry entry : List.of(
                new Note(Instant.MAX, "far away"),
                new Note(START, "half a fish \uD83D"),
                new AdviceGiven(START, "x".repeat(30_000), AdviceGiven.Followed.NO))) {
            assertThatThrownBy(() -> file.append(entry)).isInstanceOf(DocumentException.class);
        }
        assertThat(Files.size(path)).isEqualTo(size);
    }

    @Test
    void appendingToAFileThatLostItsHeaderIsRefused() throws IOException {
        JournalFile file = full();
        Files.write(path, new byte[0]);
        assertThatThrownBy(() -> file.append(ENTRIES.get(0))).isInstanceOf(DocumentException.class);
        assertThat(Files.size(path)).isZero();
    }

    @Test
    void threadsThatWriteAtTheSameTimeDoNotHurtEachOther() throws Exception {
        JournalFile.create(path, UNIT, SETTINGS);
        ExecutorService pool = Executors.newFixedThreadPool(4);
        for (int writer = 0; writer < 4; writer++) {
            int own = writer;
            JournalFile file = JournalFile.open(path);
            pool.submit(() -> {
                for (int i = 0; i < 25; i++) {
                    file.append(new Note(START.plusSeconds(i), own + " " + i));
                    file.read();
                }
                return null;
            });
        }
        pool.shutdown();
        assertThat(pool.awaitTermination(60, TimeUnit.SECONDS)).isTrue();
        JournalContents contents = JournalFile.open(path).read();
        assertThat(contents.spoilt()).isEmpty();
        assertThat(contents.journal().all(Note.class).stream().map(Note::text).distinct())
                .hasSize(100);
    }

    private JournalFile full() throws IOException {
        JournalFile file = JournalFile.create(path, UNIT, SETTINGS);
        for (JournalEntry entry : ENTRIES) {
            file.append(entry);
        }
        return file;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).toList();
        }
    }

    private static int startOfLastLine(byte[] bytes) {
        String text = new String(bytes, 0, bytes.length - 1, StandardCharsets.ISO_8859_1);
        return text.lastIndexOf('\n') + 1;
    }
}
