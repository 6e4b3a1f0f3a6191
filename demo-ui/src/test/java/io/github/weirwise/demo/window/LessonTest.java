package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lesson of docs/trainer.md, walked in two real windows; every name in bold there is a name in one of them. */
@Tag("display")
class LessonTest {
    private static final Path GUIDE = Path.of("..", "docs", "trainer.md");
    private static final Pattern BOLD = Pattern.compile("\\*\\*([^*]+)\\*\\*");

    @TempDir
    Path folder;

    private final List<JFrame> windows = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private MainPanel trainee;
    private JComponent desk;

    /** Answers as a person would; windows beside are real. */
    private Asking room() {
        return (Asking) Proxy.newProxyInstance(
                Asking.class.getClassLoader(),
                new Class<?>[] {Asking.class},
                (proxy, asked, with) -> switch (asked.getName()) {
                    case "fileToSave" -> Optional.of(folder.resolve((String) with[0]));
                    case "documentToOpen" -> Optional.of(folder.resolve("session.json"));
                    case "showBeside" -> {
                        desk = (JComponent) with[1];
                        seen.add((String) with[0]);
                        show((String) with[0], desk);
                        yield null;
                    }
                    default -> asked.invoke(Asking.NOBODY, with);
                });
    }

    private void show(String title, JComponent content) {
        JFrame window = new JFrame(title);
        window.setContentPane((JPanel) content);
        window.setSize(1024, 700);
        window.setVisible(true);
        windows.add(window);
    }

    @AfterEach
    void close() {
        Parts.onEvents(() -> {
            windows.forEach(JFrame::dispose);
            return null;
        });
    }

    private static void press(Container in, String name) {
        AbstractButton button = Parts.named(in, name, AbstractButton.class);
        assertThat(button.isEnabled()).as(name + " can be pressed").isTrue();
        button.doClick(0);
    }

    private String text(Container in, String name) {
        return Parts.named(in, name, JTextArea.class).getText();
    }

    /** Remembers every name that can be read in the windows now. */
    private void read() {
        for (JFrame window : windows) {
            for (Component each : Parts.all(window.getContentPane())) {
                if (each instanceof AbstractButton button) {
                    seen.add(button.getText());
                    if (button instanceof JMenu menu) {
                        for (Component item : menu.getMenuComponents()) {
                            if (item instanceof AbstractButton entry) {
                                seen.add(entry.getText());
                            }
                        }
                    }
                } else if (each instanceof JLabel label) {
                    seen.add(label.getText());
                }
            }
        }
    }

    @Test
    void aLessonOf45MinutesIsHeldFromTheWindow() throws IOException {
        Parts.onEvents(() -> {
            walk();
            return null;
        });
        Set<String> bold = new HashSet<>();
        BOLD.matcher(Files.readString(GUIDE)).results().forEach(each -> bold.add(each.group(1)));
        bold.remove("bold");
        bold.remove("one");
        assertThat(bold).hasSizeGreaterThan(15);
        assertThat(seen.stream().map(each -> each == null ? "" : each.replaceFirst("^[0-9] ", "")))
                .containsAll(bold);
    }

    private void walk() throws IOException {
        Theme.install(Dress.USUAL.palette());
        trainee = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, room(), Dress.USUAL);
        show("Weirwise", trainee);
        open();
        begin("Trainee A");
        hold();
        workOn();
        debrief();
        sideBySide();
    }

    /** Before the lesson: the desk comes from the menu, and nothing in the trainee's own panel leads to it. */
    private void open() {
        read();
        trainee.choose("use.practise");
        assertThat(Parts.all(trainee)).noneMatch(each -> "session.trainer".equals(each.getName()));
        for (Component each : Parts.all(trainee)) {
            if (each instanceof JMenu menu) {
                for (Component item : menu.getMenuComponents()) {
                    if ("menu.trainer".equals(item.getName())) {
                        ((AbstractButton) item).doClick(0);
                    }
                }
            }
        }
        assertThat(desk).isNotNull();
        assertThat(windows).hasSize(2);
    }

    /** 0 to 5: the scenario and the draw are chosen at the desk, and the trainee's window turns to the case. */
    private void begin(String name) {
        press(desk, "trainer.page.lesson");
        JList<?> list = Parts.named(desk, "lesson.list", JList.class);
        for (int i = 0; i < list.getModel().getSize(); i++) {
            if (list.getModel().getElementAt(i).toString().contains("Drier every day")) {
                list.setSelectedIndex(i);
            }
        }
        Parts.named(desk, "lesson.draw", JSpinner.class).setValue(7);
        Parts.named(desk, "lesson.trainee", JTextField.class).setText(name);
        press(desk, "lesson.begin");
        while (shows("question.choice.1")) {
            Parts.named(trainee, "question.choice.1", JRadioButton.class).setSelected(true);
            press(trainee, "question.answer");
        }
        assertThat(text(trainee, "case.goal")).startsWith("Goal:");
        assertThat(text(trainee, "case.safety")).startsWith("Safety:");
        press(trainee, "look.round");
        pass();
        assertThat(shows("session.hint"))
                .as("clock and hints stand under the picture from the first step")
                .isTrue();
        read();
    }

    private boolean shows(String name) {
        return Parts.all(trainee).stream().anyMatch(each -> name.equals(each.getName()) && each.isShowing());
    }

    /** Passes over what is asked; a view of the causes is given. */
    private void pass() {
        for (int i = 0; i < 4; i++) {
            if (shows("question.pass")) {
                press(trainee, "question.pass");
            } else if (shows("view.give")
                    && !Parts.named(trainee, "page.view", AbstractButton.class).isEnabled()) {
                Parts.named(trainee, "view.AIR_LINE_RESTRICTED", JSpinner.class).setValue(100);
                press(trainee, "view.give");
            }
        }
    }

    /** 10 to 15: the clock stands, and what is asked at the desk stands before everything in the trainee's window. */
    private void hold() {
        press(desk, "trainer.hold");
        press(desk, "trainer.ask");
        assertThat(text(trainee, "question")).isEqualTo("What do you expect?");
        assertThat(Parts.named(trainee, "page.look", AbstractButton.class).isEnabled())
                .isFalse();
        Parts.named(trainee, "question.words", JTextField.class).setText("It goes on getting drier.");
        press(trainee, "question.answer");
        press(desk, "trainer.hold");
        read();
    }

    /** 15 to 25: the trainer injects and notes, the trainee says what will come, acts, and lets the days pass. */
    private void workOn() {
        Parts.named(desk, "trainer.says", JTextField.class).setText("A colleague fed twice.");
        press(desk, "trainer.happen");
        assertThat(text(trainee, "told")).contains("A colleague fed twice.");
        Parts.named(desk, "trainer.notes", JTextArea.class).setText("A looked before acting.");
        press(trainee, "page.act");
        Parts.named(trainee, "predict.level", javax.swing.JComboBox.class).setSelectedIndex(3);
        Parts.named(trainee, "predict.foam", javax.swing.JComboBox.class).setSelectedIndex(3);
        press(trainee, "act.do");
        pass();
        runToTheEnd();
        press(trainee, "page.compare");
        read();
    }

    private void runToTheEnd() {
        for (int i = 0; i < 20; i++) {
            pass();
            AbstractButton on = Parts.named(trainee, "session.runOn", AbstractButton.class);
            if (on.isEnabled()) {
                on.doClick(0);
            }
        }
        pass();
    }

    /** 25 to 35: own words, five sentences, the replay, and all that is folded. */
    private void debrief() throws IOException {
        press(trainee, "page.debrief");
        read();
        press(trainee, "debrief.show");
        read();
        assertThat(text(trainee, "debrief.short")).contains("1. ", "5. ", "What it was: Salt creep");
        double crest = trainee.picture().scene().settings().weirCrestMm();
        Parts.named(trainee, "replay.time", JSlider.class).setValue(0);
        assertThat(trainee.picture().scene().settings().weirCrestMm()).isEqualTo(crest - 2);
        press(trainee, "debrief.more");
        press(trainee, "debrief.save");
        press(trainee, "debrief.keep");
        assertThat(Files.readString(folder.resolve("debrief.html"))).contains("Salt creep");
    }

    /** 35 to 42: the same draw for the next one, and both side by side with the trainer's notes. */
    private void sideBySide() throws IOException {
        begin("Trainee B");
        press(desk, "trainer.page.group");
        read();
        assertThat(Parts.named(desk, "group.list", JList.class).getModel().getSize())
                .isEqualTo(2);
        press(desk, "group.open");
        assertThat(Parts.named(desk, "group.list", JList.class).getModel().getSize())
                .isEqualTo(3);
        press(desk, "group.page");
        press(desk, "group.scores");
        assertThat(Files.readString(folder.resolve("group.html")))
                .contains("Trainee A", "Trainee B", "A looked before acting.");
        assertThat(Files.readString(folder.resolve("scores.csv"))).contains("Trainee B");
    }
}
