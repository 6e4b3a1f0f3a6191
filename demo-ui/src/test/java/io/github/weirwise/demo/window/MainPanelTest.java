package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.awt.Component;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.CellRendererPane;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The window's content without a window: the job done by keys, and what the eye and a screen reader need. */
class MainPanelTest {
    private static MainPanel panel() {
        MainPanel panel = Sample.window(Dress.USUAL);
        WindowPicture.of(panel, 1200, 800, 1);
        return panel;
    }

    @Test
    void theJobGoesRoundByKeys() {
        Parts.onEvents(() -> {
            MainPanel panel = panel();
            int readings = panel.desk().journal().all(Reading.class).size();
            press(panel, "read.simulate");
            assertThat(panel.desk().journal().all(Reading.class)).hasSize(readings + 1);
            press(panel, "read.note");
            assertThat(panel.desk().advice()).isPresent();
            Parts.named(panel, "round.page.sums", AbstractButton.class).doClick();
            assertThat(Parts.named(panel, "reasons", JTree.class).getRowCount()).isGreaterThanOrEqualTo(3);
            press(panel, "do.done");
            assertThat(panel.desk().settings().weirCrestMm()).isEqualTo(209);
            assertThat(panel.desk().journal().last(WeirMove.class)).isPresent();
            assertThat(isShown(button(panel, "do.done"), panel))
                    .as("one step, then wait")
                    .isFalse();
            var before = panel.desk().now();
            press(panel, "leave.runOn");
            assertThat(panel.desk().now()).isAfter(before);
            return null;
        });
    }

    @Test
    void theWeirInThePictureAndTheKnobsAreOne() {
        Parts.onEvents(() -> {
            MainPanel panel = panel();
            Parts.press(panel.picture(), "shift UP");
            double crest = panel.desk().settings().weirCrestMm();
            JSpinner number = Parts.named(panel, "set.weir.number", JSpinner.class);
            assertThat(((Number) number.getValue()).doubleValue()).isEqualTo(crest);
            Parts.named(panel, "set.weir.slider", JSlider.class).setValue(0);
            assertThat(panel.picture().scene().settings().weirCrestMm()).isEqualTo(165);
            return null;
        });
    }

    @Test
    void aSettingTypedInIsNotedOnce() {
        Parts.onEvents(() -> {
            MainPanel panel = panel();
            JSpinner number = Parts.named(panel, "set.weir.number", JSpinner.class);
            number.setValue(200.0);
            number.setValue(201.0);
            assertThat(panel.desk().journal().all(WeirMove.class)).hasSize(1);
            return null;
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"use.try", "use.tune", "use.practise", "use.care"})
    void whateverTakesTheFocusHasANameOfItsOwn(String use) {
        Parts.onEvents(() -> {
            Map<String, Component> names = new HashMap<>();
            MainPanel panel = panel();
            panel.choose(use);
            for (Component part : Parts.all(panel)) {
                boolean inSpinner = part.getParent() != null && part.getParent().getParent() instanceof JSpinner
                        || part.getParent() instanceof JSpinner;
                boolean stamp = part.getParent() instanceof CellRendererPane;
                if (part.isFocusable() && isShown(part, panel) && isAControl(part) && !inSpinner && !stamp) {
                    String name = part.getAccessibleContext().getAccessibleName();
                    assertThat(name).as(part.toString()).isNotBlank();
                    assertThat(names.put(name, part))
                            .as("second part named " + name)
                            .isNull();
                }
            }
            assertThat(names).hasSizeGreaterThan(10);
            return null;
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"use.try", "use.tune", "use.practise", "use.care"})
    void mnemonicsAreUnique(String use) {
        Parts.onEvents(() -> {
            List<Integer> keys = new ArrayList<>();
            MainPanel panel = panel();
            panel.choose(use);
            for (Component part : Parts.all(panel)) {
                if (part instanceof AbstractButton button && button.getMnemonic() != 0 && isShown(part, panel)) {
                    keys.add(button.getMnemonic());
                }
            }
            assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(5);
            return null;
        });
    }

    @ParameterizedTest
    @CsvSource({
        "use.tune,1200,800,METRIC",
        "use.tune,1024,700,METRIC",
        "use.tune,1024,700,US_CUSTOMARY",
        "use.try,1200,800,METRIC",
        "use.try,1024,700,METRIC",
        "use.try,1024,700,US_CUSTOMARY",
        "use.care,1024,700,METRIC"
    })
    void nothingIsClippedOrTooSmallToHit(String use, int width, int height, UnitSystem units) {
        Parts.onEvents(() -> {
            MainPanel panel = Sample.window(new Dress(new Words(new PhraseBook(Locale.ENGLISH, units)), Palette.LIGHT));
            panel.choose(use);
            panel.ask();
            WindowPicture.of(panel, width, height, 1);
            for (Component part : Parts.all(panel)) {
                boolean insideAList = part.getParent() instanceof CellRendererPane;
                if (isShown(part, panel) && !insideAList && (part instanceof JLabel || part instanceof JButton)) {
                    assertThat(part.getWidth())
                            .as("%s", part)
                            .isGreaterThanOrEqualTo(part.isVisible() ? part.getMinimumSize().width : 0);
                }
                if (part instanceof AbstractButton button && isAControl(part) && button.isVisible()) {
                    boolean ofSpinner = part.getParent() instanceof JSpinner || part.getParent() instanceof JComboBox;
                    boolean ofScrollBar = part.getParent() instanceof javax.swing.JScrollBar;
                    if (!ofSpinner && !ofScrollBar) {
                        assertThat(part.getHeight()).as("%s", part).isGreaterThanOrEqualTo(24);
                        assertThat(part.getWidth()).as("%s", part).isGreaterThanOrEqualTo(24);
                    }
                }
            }
            return null;
        });
    }

    private static boolean isShown(Component part, Component root) {
        for (Component each = part; each != root; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAControl(Component part) {
        return part instanceof AbstractButton
                || part instanceof JSlider
                || part instanceof JSpinner
                || part instanceof JTree
                || part.getName() != null
                        && part instanceof JComponent
                        && !(part instanceof JLabel || part instanceof JPanel);
    }

    private static JButton button(MainPanel panel, String name) {
        return Parts.named(panel, name, JButton.class);
    }

    /** Presses a button as a screen reader would. */
    private static void press(MainPanel panel, String name) {
        JButton button = button(panel, name);
        assertThat(button.isEnabled()).as(name).isTrue();
        button.getAccessibleContext().getAccessibleAction().doAccessibleAction(0);
    }
}
