package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.unit.LanternQuay;
import java.awt.Component;
import java.awt.Container;
import java.beans.PropertyChangeEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a screen reader is told: a name and a role for all that takes the focus, words for all that is painted, and what changes. */
class ScreenReaderTest {
    private static final Set<AccessibleRole> NO_ROLES =
            Set.of(AccessibleRole.UNKNOWN, AccessibleRole.SWING_COMPONENT, AccessibleRole.AWT_COMPONENT);

    @TempDir
    Path folder;

    private MainPanel panel;

    private void own() throws IOException {
        var unit = LanternQuay.jetty();
        panel = Sample.window(Dress.USUAL);
        panel.tune(FileDesk.create(folder.resolve("reef.jsonl"), unit, unit.ratedSettings(205), Clock.systemUTC()));
    }

    private void press(String name) {
        Parts.named(panel, name, AbstractButton.class).doClick();
    }

    private static boolean shown(Component part, Container root) {
        for (Component each = part; each != root; each = each.getParent()) {
            if (!each.isVisible() || each instanceof CellRendererPane) {
                return false;
            }
        }
        return true;
    }

    /** What stands around other things, or tells text, takes no focus in this window though Swing would let it. */
    private static boolean holdsOthers(Component part) {
        return part instanceof JPanel
                || part instanceof JScrollPane
                || part instanceof JViewport
                || part instanceof JLabel
                || part instanceof javax.swing.JSeparator
                || part instanceof javax.swing.JScrollBar
                || part.getParent() instanceof javax.swing.JScrollBar
                || part.getParent() instanceof javax.swing.JComboBox
                || part.getParent() instanceof JSpinner
                || part.getParent().getParent() instanceof JSpinner && !(part instanceof JTextField);
    }

    private static void look(String where, Container root) {
        Map<String, Component> names = new HashMap<>();
        int painted = 0;
        for (Component part : Parts.all(root)) {
            if (!shown(part, root) || !(part instanceof JComponent)) {
                continue;
            }
            AccessibleContext told = part.getAccessibleContext();
            if (told != null && told.getAccessibleRole() == AccessibleRole.CANVAS) {
                painted++;
                assertThat(told.getAccessibleName()).as("%s: %s", where, part).isNotBlank();
                assertThat(told.getAccessibleDescription())
                        .as("%s: %s", where, part)
                        .isNotBlank();
            }
            if (part.isFocusable() && part.isEnabled() && !holdsOthers(part)) {
                assertThat(told).as("%s: %s", where, part).isNotNull();
                assertThat(NO_ROLES).as("%s: %s", where, part).doesNotContain(told.getAccessibleRole());
                assertThat(told.getAccessibleName())
                        .as("%s: name of %s", where, part)
                        .isNotBlank();
                boolean editor = part.getParent().getParent() instanceof JSpinner;
                if (!editor) {
                    assertThat(names.put(told.getAccessibleRole() + told.getAccessibleName(), part))
                            .as("%s: two called %s", where, told.getAccessibleName())
                            .isNull();
                }
            }
        }
        assertThat(names.size() + painted).as(where).isGreaterThan(3);
    }

    @Test
    void everyScreenOfAnOwnUnitIsNamedAndTold() {
        Parts.onEvents(() -> {
            own();
            look("read", panel);
            press("read.more");
            look("more", panel);
            press("read.note");
            look("do", panel);
            press("do.done");
            look("leave", panel);
            for (String page : List.of("sums", "days", "score", "learn", "journal")) {
                press("round.page." + page);
                look(page, panel);
            }
            press("round.page.days");
            press("days.asTable");
            look("table of days", panel);
            for (String page : List.of("fit", "own", "start")) {
                panel.choose("use.care");
                press("care." + page);
                look("care, " + page, panel);
            }
            return null;
        });
    }

    @Test
    void everyOtherScreenIsNamedAndTold() {
        Parts.onEvents(() -> {
            panel = Sample.window(Dress.USUAL);
            for (String use : List.of("use.start", "use.try", "use.tune", "use.practise", "use.care")) {
                panel.choose(use);
                look(use, panel);
            }
            look("unit form", new UnitForm(Dress.USUAL));
            panel.tune(FileDesk.create(
                    folder.resolve("own.jsonl"),
                    LanternQuay.jetty(),
                    LanternQuay.jetty().ratedSettings(205),
                    Clock.systemUTC()));
            panel.choose("use.start");
            look("start with a unit", panel);
            return null;
        });
    }

    private List<Object> changes(String name, String property) {
        List<Object> heard = new ArrayList<>();
        Parts.named(panel, name, JComponent.class)
                .getAccessibleContext()
                .addPropertyChangeListener((PropertyChangeEvent change) -> {
                    if (change.getPropertyName().equals(property)) {
                        heard.add(change.getNewValue());
                    }
                });
        return heard;
    }

    @Test
    void whatComesOfAVisitIsToldWhereTheFocusIs() {
        Parts.onEvents(() -> {
            own();
            String told = AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY;
            List<Object> box = changes("ask.FUNNEL_LEVEL", told);
            List<Object> step = changes("do.done", told);
            List<Object> until = changes("leave.calendar", told);
            List<Object> sketch = changes("sketch", told);
            JTextField level = Parts.named(panel, "ask.FUNNEL_LEVEL", JTextField.class);
            level.setText("far");
            press("read.note");
            assertThat(box)
                    .as("a wrong number is told at its box")
                    .last()
                    .asString()
                    .contains("far");
            level.setText("12");
            press("read.note");
            assertThat(box).last().asString().contains("12 mm");
            assertThat(sketch)
                    .as("the drawing tells what was read")
                    .last()
                    .asString()
                    .contains("12 mm");
            assertThat(step)
                    .last()
                    .asString()
                    .startsWith(Parts.named(panel, "do.what", JTextArea.class).getText());
            press("do.done");
            assertThat(until)
                    .last()
                    .asString()
                    .startsWith(
                            Parts.named(panel, "leave.until", JTextArea.class).getText());
            return null;
        });
    }

    @Test
    void whatWentWrongIsTold() {
        Parts.onEvents(() -> {
            own();
            List<Object> heard = new ArrayList<>();
            Parts.named(panel, "trouble", JTextArea.class)
                    .getParent()
                    .getAccessibleContext()
                    .addPropertyChangeListener(change -> heard.add(change.getNewValue()));
            panel.tell(Words.phrase("trouble.missing", "reef.jsonl"));
            assertThat(heard).last().asString().contains("reef.jsonl");
            return null;
        });
    }
}
