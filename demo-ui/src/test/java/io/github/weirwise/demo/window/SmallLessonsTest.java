package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.look.Dress;
import javax.swing.AbstractButton;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

/** A lesson of free play at the window's own parts: each step is told as soon as the one before is done. */
class SmallLessonsTest {
    private final MainPanel panel = Sample.window(Dress.USUAL);

    private void press(String name) {
        Parts.named(panel, name, AbstractButton.class).doClick();
    }

    private void crest(double mm) {
        Parts.named(panel, "lever.WEIR.number", JSpinner.class).setValue(mm);
    }

    private void tells(String text) {
        assertThat(Parts.named(panel, "try.told", JTextArea.class).getText()).contains(text);
    }

    /** A day goes by as a film where pictures move; the rest of it at once. */
    private void pass(String name) {
        press(name);
        press("clock.skip");
    }

    @Test
    void waitingFromStartToEnd() {
        Parts.onEvents(() -> {
            panel.choose("use.try");
            press("lesson.WAITING");
            double right = panel.picture().scene().settings().weirCrestMm();
            tells("Step 1 of 5");
            crest(right - 4);
            tells("Step 1 of 5");
            crest(right - 11);
            tells("Step 2 of 5");
            pass("clock.hour");
            tells("Step 3 of 5");
            pass("clock.hour");
            crest(right - 10);
            tells("The weir was moved before it was time");
            pass("clock.settle");
            tells("Step 4 of 5");
            crest(right);
            tells("Step 5 of 5");
            pass("clock.settle");
            tells("Done. One move, then a day");
            press("lesson.WAITING");
            assertThat(Parts.named(panel, "try.told", JTextArea.class).isVisible())
                    .isFalse();
            return null;
        });
    }
}
