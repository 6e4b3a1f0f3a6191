package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Adviser;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.LanternQuay;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The round of docs/technician.md, walked word by word at a real unit's journal: every key it names does what it says. */
@Tag("display")
class TechnicianPageTest {
    private static final Path PAGE = Path.of("../docs/technician.md");
    private static final Pattern STEP = Pattern.compile("(?m)^(\\d)\\. (.*(?:\\n   .*)*)");
    private static final Pattern WORD = Pattern.compile(
            "Tab to \\*\\*(?<tab>.+?)\\*\\*|\\*\\*(?<button>.+?)\\*\\* \\(Alt\\+(?<alt>\\w)\\)|\\*\\*(?<key>\\w+)\\*\\*|`(?<typed>\\d+)`");

    /** Keystroke-level model (Card, Moran and Newell 1980; values from memory): a key of an untrained typist, and a thought. */
    private static final double SECONDS_A_KEY = 0.5;

    private static final double SECONDS_A_THOUGHT = 1.35;
    /** The visit itself: its unit is turned to, it is read, one thing is done, it is left. */
    private static final int STEPS_OF_A_VISIT = 4;

    @TempDir
    Path folder;

    private JFrame frame;

    @AfterEach
    void close() {
        if (frame != null) {
            Parts.onEvents(() -> {
                // Nothing is written into a folder that goes away.
                ((MainPanel) frame.getContentPane()).close();
                frame.dispose();
                return null;
            });
        }
    }

    private static Path begin(Path folder) throws Exception {
        Path journal = folder.resolve("reef.jsonl");
        var unit = LanternQuay.jetty();
        FileDesk begun = FileDesk.create(journal, unit, unit.ratedSettings(190), Clock.systemUTC());
        begun.note(new Forecast(
                        begun.now().minus(Duration.ofHours(24)),
                        begun.now(),
                        new io.github.weirwise.report.Range(5, 9),
                        new io.github.weirwise.report.Range(20, 60))
                .asNote());
        return journal;
    }

    private MainPanel open(Path journal, Adviser adviser) {
        Kept kept = new Kept(folder.resolve("kept"));
        kept.keep(Kept.Work.JOURNALS, journal + "\n");
        frame = Parts.onEvents(() -> MainWindow.open(Sample::desk, Sample::desk, kept, adviser, Dress.USUAL, true));
        return (MainPanel) frame.getContentPane();
    }

    /** Asks for a look first, and takes its time, so that a person's hands are quicker than the answer. */
    private static Advice lookFirst(Advice other, Journal journal) {
        boolean cup = journal.last(Reading.class)
                .flatMap(reading -> reading.find(Observation.CupVolume.class))
                .isPresent();
        LockSupport.parkNanos(400_000_000);
        return cup
                ? other
                : new Advice(
                        new Step.Look(LookKind.CUP_VOLUME),
                        other.what(),
                        other.diagnosis(),
                        other.expectation(),
                        Optional.empty(),
                        other.judgeAt(),
                        other.why(),
                        other.wouldChangeIt(),
                        other.cautions());
    }

    @Test
    void aLookIsAnsweredWhereTheHandsAre() throws Exception {
        Path journal = begin(folder);
        MainPanel panel =
                open(journal, (unit, told, now, at) -> lookFirst(Sample.RAISE_FOUR.advise(unit, told, now, at), now));
        Keyboard keys = new Keyboard();
        keys.untilOn(panel, "start.go.0");
        keys.untilThere("the unit has the focus", () -> name(Keyboard.owner()).equals("start.go.0"));
        keys.type(KeyEvent.VK_SPACE);
        keys.untilThere("the level has the focus", () -> name(Keyboard.owner()).equals("ask.FUNNEL_LEVEL"));
        keys.type(KeyEvent.VK_1, KeyEvent.VK_2, KeyEvent.VK_ENTER);
        keys.untilOn(panel, "do.cannot");
        keys.untilThere("the cup has the focus", () -> name(Keyboard.owner()).equals("ask.CUP_VOLUME"));
        keys.type(KeyEvent.VK_4, KeyEvent.VK_0, KeyEvent.VK_TAB, KeyEvent.VK_2, KeyEvent.VK_0, KeyEvent.VK_ENTER);
        keys.untilThere(
                "the cup is noted",
                () -> FileDesk.open(journal, Clock.systemUTC())
                        .journal()
                        .last(Reading.class)
                        .flatMap(reading -> reading.find(Observation.CupVolume.class))
                        .filter(new Observation.CupVolume(40, 20, false)::equals)
                        .isPresent());
        keys.untilThere(
                "the next step has the focus", () -> name(Keyboard.owner()).equals("do.done"));
    }

    private static String name(Component part) {
        return part == null ? "" : String.valueOf(part.getName());
    }

    private static Map<Integer, String> steps() throws Exception {
        String page = Files.readString(PAGE);
        String round = page.substring(page.indexOf("## A round with the demo"), page.indexOf("## Safety"));
        Map<Integer, String> steps = new TreeMap<>();
        Matcher step = STEP.matcher(round);
        while (step.find()) {
            steps.put(Integer.parseInt(step.group(1)), step.group(2));
        }
        return steps;
    }

    @Test
    void theRoundIsWalkedAsThePageTellsIt() throws Exception {
        Path journal = begin(folder);
        MainPanel panel = open(journal, Sample.RAISE_FOUR);
        Keyboard keys = new Keyboard();
        keys.untilOn(panel, "start.go.0");
        Map<Integer, String> steps = steps();
        assertThat(steps.keySet()).containsExactly(1, 2, 3, 4, 5, 6);
        double seconds = 0;
        for (Map.Entry<Integer, String> step : steps.entrySet()) {
            int before = keys.pressed();
            walk(panel, keys, step.getValue());
            came(panel, keys, step.getKey(), journal);
            long thoughts = WORD.matcher(step.getValue()).results().count();
            seconds += step.getKey() > STEPS_OF_A_VISIT
                    ? 0
                    : SECONDS_A_KEY * (keys.pressed() - before) + SECONDS_A_THOUGHT * thoughts;
        }
        assertThat(seconds)
                .as("seconds at the keys, for somebody who has read the ruler")
                .isBetween(5.0, 60.0);
    }

    private static void walk(MainPanel panel, Keyboard keys, String step) {
        boolean look = false;
        Matcher word = WORD.matcher(step);
        while (word.find()) {
            if (word.group("tab") != null) {
                keys.tabTo(button(panel, word.group("tab"), false).getName());
            } else if (word.group("button") != null) {
                AbstractButton button = button(panel, word.group("button"), true);
                assertThat((char) button.getMnemonic())
                        .as(button.getText())
                        .isEqualTo(word.group("alt").charAt(0));
                keys.alt(button.getMnemonic());
            } else if (word.group("typed") != null) {
                keys.untilThere("a box has the focus", () -> Keyboard.owner() instanceof javax.swing.JTextField);
                word.group("typed").chars().forEach(keys::type);
            } else if (step.startsWith("*Do") && !look) {
                // The step that this adviser gives is no look: "and Enter" is for those who were asked for one.
                look = true;
            } else {
                if (step.startsWith("*Do")) {
                    // It is read first.
                    keys.untilOn(panel, "do.done");
                }
                keys.type(word.group("key").equals("Space") ? KeyEvent.VK_SPACE : KeyEvent.VK_ENTER);
            }
        }
    }

    /** The button with a label that can be seen and pressed now. */
    private static AbstractButton button(MainPanel panel, String label, boolean withKey) {
        AbstractButton[] found = new AbstractButton[1];
        try {
            new Keyboard().untilThere(label + " is there and on", () -> {
                for (Component part : Parts.all(panel)) {
                    if (found[0] == null
                            && part instanceof AbstractButton button
                            && button.getText().equals(label)
                            && button.isShowing()
                            && button.isEnabled()
                            && button.getMnemonic() != 0 == withKey) {
                        found[0] = button;
                    }
                }
                return found[0] != null;
            });
        } catch (java.awt.AWTException e) {
            throw new IllegalStateException(e);
        }
        return found[0];
    }

    private void came(MainPanel panel, Keyboard keys, int step, Path journal) throws Exception {
        switch (step) {
            case 1 -> {
                keys.untilOn(panel, "ask.FUNNEL_LEVEL");
                assertThat(frame.getTitle()).contains("reef.jsonl");
                assertThat(Parts.named(panel, "expected.level", Component.class).isShowing())
                        .as("it opens with: was it as expected?")
                        .isTrue();
            }
            case 2 ->
                keys.untilThere(
                        "the level is noted",
                        () -> FileDesk.open(journal, Clock.systemUTC())
                                .journal()
                                .last(Reading.class)
                                .flatMap(reading -> reading.find(Observation.FunnelLevel.class))
                                .filter(new Observation.FunnelLevel(12)::equals)
                                .isPresent());
            case 3 -> {
                keys.untilThere(
                        "the move is noted",
                        () -> FileDesk.open(journal, Clock.systemUTC())
                                .journal()
                                .last(WeirMove.class)
                                .isPresent());
                keys.untilOn(panel, "leave.until");
            }
            case 4 ->
                keys.untilThere(
                        "the reminder is copied",
                        () -> String.valueOf(java.awt.Toolkit.getDefaultToolkit()
                                        .getSystemClipboard()
                                        .getData(java.awt.datatransfer.DataFlavor.stringFlavor))
                                .contains("Leave it until"));
            case 5 -> keys.untilOn(panel, "leave.until");
            default ->
                assertThat(List.copyOf(FileDesk.open(journal, Clock.systemUTC())
                                .journal()
                                .entries()))
                        .as("what the next visit opens with")
                        .anyMatch(entry -> Forecast.of(entry).isPresent());
        }
    }
}
