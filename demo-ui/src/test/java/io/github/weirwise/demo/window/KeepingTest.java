package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.InventedTank;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.json.JournalFile;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Note;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.unit.LanternQuay;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window that is closed mid-way loses nothing; what cannot be kept or read is told and harms nothing. */
class KeepingTest {
    @TempDir
    Path folder;

    private Kept kept;

    @BeforeEach
    void keepHere() {
        kept = new Kept(folder.resolve("kept"));
    }

    private static TankDesk untouched() {
        return new TankDesk(InventedTank.of(3));
    }

    private MainPanel window() {
        MainPanel panel = Sample.window(Dress.USUAL);
        panel.keep(kept, KeepingTest::untouched);
        return panel;
    }

    private static void press(MainPanel panel, String name) {
        Parts.named(panel, name, JButton.class).doClick();
    }

    @Test
    void theInventedTankIsTakenUpWhereItWasLeft() {
        Parts.onEvents(() -> {
            MainPanel first = window();
            ((TankDesk) first.desk()).moveWeir(201);
            ((TankDesk) first.desk()).run(Duration.ofHours(31));
            press(first, "read.simulate");
            Journal journal = first.desk().journal();
            Instant now = first.desk().now();
            double amount = first.desk().scene().skimmateMlPerDay();
            first.close();

            MainPanel second = window();
            assertThat(second.desk().journal()).isEqualTo(journal);
            assertThat(second.desk().now()).isEqualTo(now);
            assertThat(second.desk().scene().skimmateMlPerDay())
                    .isCloseTo(amount, org.assertj.core.data.Percentage.withPercentage(0.1));
            return null;
        });
    }

    @Test
    void theInventedTankBeginsAnewOnlyAfterASecondWord() {
        Parts.onEvents(() -> {
            Asking asking = mock(Asking.class);
            when(asking.sure(any(), any())).thenReturn(false).thenReturn(true);
            Theme.install(Dress.USUAL.palette());
            MainPanel panel = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, asking, Dress.USUAL);
            panel.keep(kept, KeepingTest::untouched);
            panel.tuneInvented();
            ((TankDesk) panel.desk()).moveWeir(201);
            press(panel, "start.anew");
            assertThat(panel.desk().settings().weirCrestMm()).isEqualTo(201);
            press(panel, "start.anew");
            assertThat(panel.desk().settings().weirCrestMm()).isNotEqualTo(201);
            return null;
        });
    }

    @Test
    void aPracticeIsTakenUpWhereItWasLeft() {
        Parts.onEvents(() -> {
            MainPanel first = window();
            first.choose("use.practise");
            press(first, "choose.begin");
            press(first, "question.pass");
            press(first, "look.round");
            String seen = Parts.named(first, "look.detail", JTextArea.class).getText();
            first.close();
            MainPanel second = window();
            second.choose("use.practise");
            assertThat(Parts.named(second, "look.detail", JTextArea.class).getText())
                    .isEqualTo(seen);
            press(second, "session.leave");
            assertThat(kept.found(Kept.Work.PRACTICE)).isEmpty();
            return null;
        });
    }

    @Test
    void aDamagedOrStrangeFileIsNotTakenUpAndHarmsNothing() throws IOException {
        Files.createDirectories(kept.folder());
        for (String damage : new String[] {"", "{", "{\"version\": 99}", "[1, 2]", "null"}) {
            Files.writeString(kept.folder().resolve("tank.json"), damage);
            Files.writeString(kept.folder().resolve("journals.txt"), damage);
            Files.writeString(kept.folder().resolve("practice.json"), damage);
            Parts.onEvents(() -> {
                assertThat(window().desk().journal())
                        .as(damage)
                        .isEqualTo(Sample.desk().journal());
                return null;
            });
            assertThat(kept.folder().resolve("tank.json")).hasContent(damage);
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldAndTheWorkGoesOn() throws IOException {
        Files.writeString(kept.folder(), "a file stands where the folder should be");
        assertThat(kept.keep(Kept.Work.TANK, "{}")).isPresent();
        Parts.onEvents(() -> {
            MainPanel panel = window();
            ((TankDesk) panel.desk()).moveWeir(201);
            panel.close();
            assertThat(panel.desk().settings().weirCrestMm()).isEqualTo(201);
            return null;
        });
    }

    @Test
    void anOwnJournalStandsOnTheStartPageWithWhatWasTypedAndNotNoted() {
        Parts.onEvents(() -> {
            Path path = folder.resolve("unit.jsonl");
            MainPanel first = window();
            first.tune(FileDesk.create(
                    path,
                    LanternQuay.seahorseRoom(),
                    LanternQuay.seahorseRoom().ratedSettings(150),
                    Clock.systemUTC()));
            Parts.named(first, "ask.FUNNEL_LEVEL", JTextField.class).setText("9.5");
            first.close();
            MainPanel second = window();
            assertThat(Parts.named(second, "start.name.0", JTextArea.class).getText())
                    .isEqualTo(LanternQuay.seahorseRoom().name());
            press(second, "start.go.0");
            assertThat(((FileDesk) second.desk()).path()).isEqualTo(path);
            assertThat(Parts.named(second, "ask.FUNNEL_LEVEL", JTextField.class).getText())
                    .isEqualTo("9.5");
            assertThat(Parts.named(second, "read.said", JTextArea.class).getText())
                    .contains("not noted yet");
            press(second, "read.note");
            second.close();
            MainPanel third = window();
            press(third, "start.go.0");
            assertThat(Parts.named(third, "ask.FUNNEL_LEVEL", JTextField.class).getText())
                    .as("it is noted")
                    .isEmpty();
            return null;
        });
    }

    @Test
    void aJournalIsRenamedExportedPrintedAndTakenOffTheListButNeverDeleted() throws Exception {
        Path path = folder.resolve("unit.jsonl");
        var unit = LanternQuay.seahorseRoom();
        FileDesk desk = FileDesk.create(path, unit, unit.ratedSettings(150), Clock.systemUTC());
        Path copy = folder.resolve("copy.jsonl");
        Path sheet = folder.resolve("sheet.html");
        Asking asking = mock(Asking.class);
        when(asking.newName(any(), any())).thenReturn(Optional.of("quay"));
        when(asking.fileToSave(any(), any())).thenReturn(Optional.of(copy)).thenReturn(Optional.of(sheet));
        when(asking.sure(any(), any())).thenReturn(false).thenReturn(true);
        Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            MainPanel panel = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, asking, Dress.USUAL);
            panel.keep(kept, KeepingTest::untouched);
            panel.tune(desk);
            panel.choose("use.care");
            Parts.named(panel, "own.name", JTextField.class).setText("Quay tank");
            press(panel, "own.check");
            panel.choose("use.start");
            press(panel, "start.rename.0");
            assertThat(path).doesNotExist();
            assertThat(folder.resolve("quay.jsonl")).exists();
            press(panel, "start.export.0");
            assertThat(copy).hasSameTextualContentAs(folder.resolve("quay.jsonl"));
            press(panel, "start.print.0");
            assertThat(sheet)
                    .content()
                    .as("the fit check of its tank goes with it")
                    .contains(unit.name(), "Drain-down at a power cut");
            press(panel, "start.drop.0");
            assertThat(Parts.named(panel, "start.drop.0", JButton.class))
                    .as("a second word")
                    .isNotNull();
            press(panel, "start.drop.0");
            assertThat(Parts.all(panel).stream().noneMatch(part -> "start.drop.0".equals(part.getName())))
                    .isTrue();
            assertThat(folder.resolve("quay.jsonl")).exists();
            panel.close();
            return null;
        });
    }

    @Test
    void whatIsTypedOfOnesOwnTankStandsThereAgain() {
        Parts.onEvents(() -> {
            MainPanel first = window();
            first.choose("use.care");
            Parts.named(first, "own.name", JTextField.class).setText("Corner tank");
            Parts.named(first, "site.TANK_RIM", JTextField.class).setText("85o");
            first.close();
            MainPanel second = window();
            second.choose("use.care");
            assertThat(Parts.named(second, "own.name", JTextField.class).getText())
                    .isEqualTo("Corner tank");
            assertThat(Parts.named(second, "site.TANK_RIM", JTextField.class).getText())
                    .isEqualTo("85o");
            second.close();
            return null;
        });
    }

    @Test
    void whatASecondProgramAddsToAnOpenJournalIsShown() {
        Parts.onEvents(() -> {
            Path path = folder.resolve("unit.jsonl");
            FileDesk desk = FileDesk.create(
                    path, LanternQuay.seahorseRoom(), LanternQuay.seahorseRoom().ratedSettings(150), Clock.systemUTC());
            MainPanel panel = Sample.window(Dress.USUAL);
            panel.tune(desk);
            Note theirs = new Note(Instant.parse("2026-05-04T09:30:00Z"), "theirs");
            JournalFile.open(path).append(theirs);
            panel.lookAtJournal();
            assertThat(panel.desk().journal().entries()).containsExactly(theirs);
            assertThat(Parts.named(panel, "trouble", JTextArea.class).getText()).contains("unit.jsonl");
            Files.writeString(path, "no journal at all");
            panel.lookAtJournal();
            assertThat(panel.desk().journal().entries())
                    .as("what was read stays in sight")
                    .containsExactly(theirs);
            assertThat(Parts.named(panel, "trouble", JTextArea.class).getText()).contains("not a journal");
            return null;
        });
    }

    @Test
    void aDescriptionOfATankThatCannotBeReadIsToldWithItsPlace() throws IOException {
        String sound = WeirwiseJson.writeInstallation(LanternQuaySites.schoolTank());
        Path file = folder.resolve("corner.json");
        Asking asking = mock(Asking.class);
        when(asking.documentToOpen(any())).thenReturn(Optional.of(file));
        Map<String, String> told = new LinkedHashMap<>();
        told.put(sound.replace("\"version\":2", "\"version\":3"), "$.version");
        told.put(sound.substring(0, sound.length() / 2), "corner.json is not a tank description");
        told.put(sound.replace("\"headroomMm\":520", "\"headroomCm\":52"), "headroomMm");
        told.put("", "corner.json is not a tank description");
        assertThat(told).hasSize(4).doesNotContainKey(sound);
        for (Map.Entry<String, String> each : told.entrySet()) {
            Files.writeString(file, each.getKey());
            assertThat(openOwn(asking)).contains(each.getValue());
        }
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertThat(openOwn(asking)).contains("not UTF-8 text");
        Files.delete(file);
        assertThat(openOwn(asking)).contains("There is no file corner.json");
        Files.writeString(file, sound);
        assertThat(openOwn(asking)).isEmpty();
    }

    @Test
    void aUnitThatCannotBeTakenIsAskedForAgainWithWhatWasTyped() throws IOException {
        Path taken = folder.resolve("taken.jsonl");
        Files.writeString(taken, "something of somebody else's");
        Path free = folder.resolve("free.jsonl");
        Asking asking = mock(Asking.class);
        List<String> said = new ArrayList<>();
        when(asking.describe(any(), any())).thenAnswer(call -> {
            UnitForm form = call.getArgument(0);
            JTextField neck = Parts.named(form, "form.NECK_BORE", JTextField.class);
            JTextField name = Parts.named(form, "unit.name", JTextField.class);
            JTextField crest = Parts.named(form, "form.CREST", JTextField.class);
            said.add(name.getText() + "|" + neck.getText() + "|"
                    + Parts.named(form, "form.NECK_BORE.label", JTextArea.class).getText());
            // Enter with an empty name first, then a neck that is too wide, then one that is right.
            switch (said.size()) {
                case 2 -> {
                    name.setText("Reef hall");
                    neck.setText("900");
                }
                case 3 -> neck.setText("48");
                case 4 -> {
                    crest.setText("9");
                    said.add(Parts.named(form, "form.CREST.label", JTextArea.class)
                            .getText());
                    // What is possible for one follows what was typed for the others.
                    Parts.named(form, "form.BORE", JTextField.class).setText("160");
                    neck.setText("150");
                    said.add(Parts.named(form, "form.NECK_BORE.label", JTextArea.class)
                            .getText());
                    Parts.named(form, "form.BORE", JTextField.class).setText("");
                    neck.setText("48");
                    crest.setText("231");
                }
                default -> {}
            }
            return true;
        });
        when(asking.journalToBegin(eq("Reef hall"), any()))
                .thenReturn(Optional.of(taken))
                .thenReturn(Optional.of(free));
        Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            MainPanel panel = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, asking, Dress.USUAL);
            Parts.named(panel, "menu.file", JMenu.class).getItem(0).doClick();
            assertThat(Parts.named(panel, "trouble", JTextArea.class).getText()).contains("taken.jsonl");
            assertThat(taken).hasContent("something of somebody else's");
            Parts.named(panel, "menu.file", JMenu.class).getItem(0).doClick();
            assertThat(((FileDesk) panel.desk()).path()).isEqualTo(free);
            assertThat(panel.desk().unit().column().neckBoreMm()).isEqualTo(48);
            assertThat(panel.desk().settings().weirCrestMm())
                    .as("moves count from here, so it is measured, never assumed")
                    .isEqualTo(231);
            assertThat(panel.desk().journal().last(Note.class).orElseThrow().text())
                    .as("nothing is invented in silence")
                    .contains("not measured: ", "Column, bore: 118 mm")
                    .doesNotContain("Neck, bore");
            return null;
        });
        assertThat(said)
                .containsExactly(
                        "||Neck, bore",
                        "||Neck, bore",
                        "Reef hall|900|Neck, bore: 5 to 118 mm",
                        "Reef hall|48|Neck, bore",
                        "Weir crest now: 165 to 295 mm",
                        "Neck, bore",
                        "Reef hall|48|Neck, bore");
    }

    @Test
    void anEntryThatWaitsForAnotherProgramIsToldAndWhatWasTypedStaysUntilItIsNoted() throws Exception {
        Path path = folder.resolve("unit.jsonl");
        FileDesk desk = FileDesk.create(
                path, LanternQuay.seahorseRoom(), LanternQuay.seahorseRoom().ratedSettings(150), Clock.systemUTC());
        MainPanel panel = Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            MainPanel made =
                    new MainPanel(Sample::desk, Sample.RAISE_FOUR, MainWindow.worker(), Asking.NOBODY, Dress.USUAL);
            made.begin();
            made.tune(desk);
            return made;
        });
        until(() -> Parts.all(panel).stream().anyMatch(part -> "read.note".equals(part.getName())));
        try (FileChannel other = FileChannel.open(path, StandardOpenOption.WRITE);
                FileLock held = other.lock(Long.MAX_VALUE - 1, 1, false)) {
            assertThat(held.isValid()).isTrue();
            Parts.onEvents(() -> {
                Parts.named(panel, "ask.FUNNEL_LEVEL", JTextField.class).setText("9");
                press(panel, "read.note");
                return null;
            });
            until(() -> Parts.named(panel, "trouble", JTextArea.class).getText().contains("waits for it"));
            assertThat(typed(panel)).isEqualTo("9");
        }
        until(() -> desk.journal().entries().size() == 1);
        until(() -> typed(panel).isEmpty());
        until(() -> !Parts.named(panel, "trouble", JTextArea.class).getParent().isVisible());
    }

    private static String typed(MainPanel panel) {
        return Parts.named(panel, "ask.FUNNEL_LEVEL", JTextField.class).getText();
    }

    private static void until(Callable<Boolean> condition) throws InterruptedException {
        long end = System.currentTimeMillis() + 15_000;
        while (!Parts.onEvents(condition)) {
            assertThat(System.currentTimeMillis()).as("waited in vain").isLessThan(end);
            Thread.sleep(20);
        }
    }

    /** Opens the file in the form of one's own tank; gives what was told. */
    private static String openOwn(Asking asking) {
        return Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            MainPanel panel = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, asking, Dress.USUAL);
            panel.choose("use.care");
            press(panel, "own.open");
            JTextArea trouble = Parts.named(panel, "trouble", JTextArea.class);
            String name = Parts.named(panel, "own.name", JTextField.class).getText();
            assertThat(name.isEmpty())
                    .as("a file that is told off fills nothing in")
                    .isEqualTo(trouble.getParent().isVisible());
            return trouble.getParent().isVisible() ? trouble.getText() : "";
        });
    }
}
