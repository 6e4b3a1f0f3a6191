package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Each of the four uses from start to end in a real window, by keys alone. Without a screen these fail, they do not skip. */
@Tag("display")
class UsesByKeysTest {
    private JFrame frame;
    private MainPanel panel;
    private Keyboard keys;

    @BeforeEach
    void open() throws Exception {
        assertThat(GraphicsEnvironment.isHeadless())
                .as("these tests need a display")
                .isFalse();
        keys = new Keyboard();
        frame = Parts.onEvents(() -> MainWindow.open(Sample::desk, Sample.RAISE_FOUR, Dress.USUAL, true));
        panel = (MainPanel) frame.getContentPane();
        Parts.onEvents(() -> {
            panel.choose("use.tune");
            return null;
        });
        keys.until("the tank is there", () -> panel.ready());
        Parts.onEvents(() -> panel.picture().requestFocusInWindow());
        keys.until(
                "the picture has the focus",
                () -> panel.complete()
                        && panel.picture().isShowing()
                        && panel.picture().isFocusOwner());
    }

    @AfterEach
    void close() {
        if (frame != null) {
            Parts.onEvents(() -> {
                frame.dispose();
                return null;
            });
        }
    }

    private double crest() {
        return Parts.onEvents(() -> panel.picture().scene().settings().weirCrestMm());
    }

    private String text(String name) {
        return Parts.onEvents(() -> Parts.named(panel, name, JTextArea.class).getText());
    }

    @Test
    void tryFromStartToEnd() {
        keys.alt(KeyEvent.VK_T);
        keys.untilOn(panel, "unit.0");
        keys.alt(KeyEvent.VK_M);
        keys.until(
                "the seahorse room's unit",
                () -> panel.picture().scene().unit().name().startsWith("Seahorse"));
        double before = crest();
        keys.tabTo("unitPicture");
        keys.type(KeyEvent.VK_UP, KeyEvent.VK_UP);
        keys.until("the weir went up", () -> crest() == before + 1);
        keys.untilOn(panel, "clock.settle");
        keys.alt(KeyEvent.VK_E);
        keys.untilThere(
                "the foam has settled",
                () -> !Parts.named(panel, "clock.settle", javax.swing.JButton.class)
                        .isEnabled());
        keys.alt(KeyEvent.VK_B);
        keys.untilOn(panel, "response.table");
        keys.tabTo("lever.FLOW.slider");
        double flow = panel.picture().scene().settings().flowLitresPerHour();
        keys.type(KeyEvent.VK_LEFT);
        keys.until("less water", () -> panel.picture().scene().settings().flowLitresPerHour() < flow);
    }

    @Test
    void tuneFromStartToEnd() {
        int readings = panel.desk().journal().all(Reading.class).size();
        keys.tabTo("ask.FUNNEL_LEVEL");
        keys.type(KeyEvent.VK_9);
        keys.tabTo("ask.FOAM_LOOK.CREAMY");
        keys.type(KeyEvent.VK_SPACE);
        keys.type(KeyEvent.VK_ENTER);
        keys.until(
                "it is noted", () -> panel.desk().journal().all(Reading.class).size() == readings + 1);
        Reading noted = panel.desk().journal().last(Reading.class).orElseThrow();
        assertThat(noted.find(Observation.FunnelLevel.class)).contains(new Observation.FunnelLevel(9));
        assertThat(noted.find(Observation.FoamLook.class)).isPresent();
        keys.untilOn(panel, "do.done");
        keys.untilThere(
                "the focus is on it", () -> "do.done".equals(Keyboard.owner().getName()));
        keys.type(KeyEvent.VK_ENTER);
        keys.until("the step is done", () -> crest() == 209);
        var now = panel.desk().now();
        keys.untilOn(panel, "leave.runOn");
        keys.alt(KeyEvent.VK_G);
        keys.until("the clock ran on", () -> panel.desk().now().isAfter(now));
        keys.alt(KeyEvent.VK_J);
        keys.untilOn(panel, "journal");
    }

    @Test
    void aStepThatNobodyCanHaveReadIsNotDone() {
        keys.tabTo("ask.FUNNEL_LEVEL");
        Parts.onEvents(() -> {
            Parts.named(panel, "read.note", javax.swing.JButton.class).doClick();
            // The step comes, and a key that was pressed too soon is heard before it is painted.
            panel.desk()
                    .advised(Sample.RAISE_FOUR.advise(
                            panel.desk().unit(),
                            panel.desk().told(),
                            panel.desk().journal(),
                            panel.desk().now()));
            assertThat(Parts.named(panel, "do.what", JTextArea.class).getText()).contains("too dry");
            Parts.press(Parts.named(panel, "do.done", javax.swing.JButton.class), "ENTER");
            assertThat(panel.desk().stepTaken()).isFalse();
            return null;
        });
        keys.untilOn(panel, "do.done");
        keys.untilThere(
                "the focus is on it", () -> "do.done".equals(Keyboard.owner().getName()));
        keys.type(KeyEvent.VK_ENTER);
        keys.until("the step is done", () -> crest() == 209);
    }

    @Test
    void practiseFromStartToEnd() {
        keys.alt(KeyEvent.VK_P);
        keys.untilOn(panel, "choose.begin");
        keys.untilThere(
                "scenarios are listed",
                () -> Parts.named(panel, "choose.list", JList.class).getModel().getSize() > 5);
        keys.alt(KeyEvent.VK_B);
        keys.untilOn(panel, "question.choice.1");
        keys.tabTo("question.choice.1");
        keys.type(KeyEvent.VK_SPACE);
        keys.alt(KeyEvent.VK_E);
        keys.untilOn(panel, "look.round");
        keys.until("it is told why", () -> text("told").contains("Right:"));
        keys.alt(KeyEvent.VK_D);
        keys.untilOn(panel, "question.pass");
        keys.alt(KeyEvent.VK_Q);
        keys.alt(KeyEvent.VK_M);
        keys.tabTo("view.WEIR_TOO_LOW");
        for (int i = 0; i < 20; i++) {
            keys.type(KeyEvent.VK_UP);
        }
        keys.untilThere(
                "all is shared out",
                () -> ((Number) Parts.named(panel, "view.WEIR_TOO_LOW", JSpinner.class)
                                        .getValue())
                                .intValue()
                        == 100);
        keys.untilOn(panel, "view.give");
        keys.alt(KeyEvent.VK_E);
        keys.alt(KeyEvent.VK_I);
        keys.untilOn(panel, "advice.open");
        keys.alt(KeyEvent.VK_W);
        keys.untilThere(
                "the adviser's view is open",
                () -> !Parts.named(panel, "advice.open", javax.swing.JButton.class)
                        .isEnabled());
        keys.alt(KeyEvent.VK_A);
        keys.untilOn(panel, "predict.level");
        double mark = crest();
        keys.tabTo("predict.level");
        keys.type(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        keys.tabTo("predict.foam");
        keys.type(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        keys.untilOn(panel, "act.do");
        keys.alt(KeyEvent.VK_N);
        keys.until("the weir is up", () -> crest() == mark + 2);
        keys.untilOn(panel, "question.pass");
        keys.alt(KeyEvent.VK_Q);
        keys.untilOn(panel, "session.runOn");
        keys.alt(KeyEvent.VK_R);
        keys.untilOn(panel, "look.round");
        keys.alt(KeyEvent.VK_B);
        keys.untilOn(panel, "debrief.show");
        keys.alt(KeyEvent.VK_W);
        keys.untilOn(panel, "debrief.back");
    }

    @Test
    void setUpAndCareFromStartToEnd() {
        keys.alt(KeyEvent.VK_C);
        keys.untilOn(panel, "fit.list");
        String first = text("fit.detail");
        keys.tabTo("fit.list");
        keys.type(KeyEvent.VK_DOWN);
        keys.until("the next question", () -> !text("fit.detail").equals(first));
        keys.tabTo("care.fit");
        keys.type(KeyEvent.VK_RIGHT);
        keys.untilOn(panel, "own.check");
        keys.tabTo("own.name");
        keys.type(KeyEvent.VK_Q, KeyEvent.VK_A);
        keys.tabTo("site.TANK_RIM");
        keys.type(KeyEvent.VK_7);
        keys.alt(KeyEvent.VK_I);
        keys.untilThere(
                "it is told at the box",
                () -> Parts.all(panel).stream()
                        .anyMatch(part -> "site.TANK_RIM.label".equals(part.getName())
                                && ((JTextArea) part).getText().contains("780 to 6000 mm")));
        keys.until(
                "the box has the focus",
                () -> "site.TANK_RIM".equals(Keyboard.owner().getName()));
        keys.type(KeyEvent.VK_8, KeyEvent.VK_5, KeyEvent.VK_0);
        keys.alt(KeyEvent.VK_I);
        keys.untilOn(panel, "fit.list");
        keys.untilThere(
                "it is the own tank",
                () -> String.valueOf(Parts.named(panel, "fit.site", javax.swing.JComboBox.class)
                                .getSelectedItem())
                        .contains("qa"));
        keys.tabTo("care.fit");
        keys.type(KeyEvent.VK_RIGHT);
        keys.untilOn(panel, "own.check");
        keys.type(KeyEvent.VK_RIGHT);
        keys.untilOn(panel, "start.list");
        keys.tabTo("start.tick");
        keys.type(KeyEvent.VK_SPACE);
        keys.untilThere(
                "the first step is ticked off",
                () -> Parts.named(panel, "start.list", JList.class)
                        .getModel()
                        .getElementAt(0)
                        .toString()
                        .contains("done"));
    }
}
