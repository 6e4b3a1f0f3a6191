package io.github.weirwise.demo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Step;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.skimmer.LanternQuay;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real unit with its journal on disk. */
class FileDeskTest {
    private static final SkimmerUnit UNIT = LanternQuay.middle();
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
    void movingTheWeirInThePictureIsADraftUntilItIsNoted() throws IOException {
        desk.moveWeir(197);
        assertThat(onDisk()).isEmpty();
        assertThat(desk.hasDraft()).isTrue();
        assertThat(desk.scene().settings().weirCrestMm()).isEqualTo(197);
        desk.noteDraft();
        assertThat(onDisk()).containsExactly(new WeirMove(NOW, 197, false));
        assertThat(desk.hasDraft()).isFalse();
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
}
