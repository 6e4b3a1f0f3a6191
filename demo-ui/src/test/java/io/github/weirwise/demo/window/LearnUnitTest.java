package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.Weirwise;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Learning;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.reading.WeirMove;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

/** A unit is learned in the round: the plan is shown, begun, walked visit by visit, and what was learned stands at its end. */
class LearnUnitTest {
    private MainPanel panel;

    private void press(String name) {
        AbstractButton button = Parts.named(panel, name, AbstractButton.class);
        assertThat(button.isEnabled() && button.isVisible()).as(name).isTrue();
        button.doClick();
    }

    private String text(String name) {
        return Parts.named(panel, name, JTextArea.class).getText();
    }

    private Learning plan() {
        return Learning.in(panel.desk().journal()).orElseThrow();
    }

    @Test
    void aPlanIsWalkedVisitByVisit() {
        Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            panel = new MainPanel(Sample::desk, Weirwise::advise, Background.AT_ONCE, Asking.NOBODY, Dress.USUAL);
            panel.choose("use.tune");
            press("round.page.learn");
            press("learn.plan");
            assertThat(text("learn.steps")).contains("weir at").contains("weir back to");
            double home = panel.desk().settings().weirCrestMm();
            int moves = panel.desk().journal().all(WeirMove.class).size();
            press("learn.begin");
            assertThat(plan().runs()).isTrue();
            assertThat(text("do.what"))
                    .contains("setting 1 of " + plan().stages().size());
            int visits = 0;
            while (plan().runs() && visits < 20) {
                visits++;
                press("do.done");
                press("leave.runOn");
                press("read.simulate");
                press("read.note");
            }
            assertThat(plan().runs()).as("after %d visits", visits).isFalse();
            assertThat(panel.desk().settings().weirCrestMm()).isEqualTo(home);
            assertThat(panel.desk().journal().all(WeirMove.class).size() - moves)
                    .isGreaterThanOrEqualTo(plan().stages().size());
            press("round.page.learn");
            assertThat(text("learn.said")).contains("over");
            assertThat(text("learn.ranges"))
                    .contains("known before")
                    .contains("expected after")
                    .contains("known now");
            return null;
        });
    }

    @Test
    void aPlanCanBeStopped() {
        Parts.onEvents(() -> {
            panel = Sample.window(Dress.USUAL);
            press("round.page.learn");
            press("learn.plan");
            press("learn.begin");
            press("round.page.learn");
            press("learn.stop");
            assertThat(plan().runs()).isFalse();
            press("round.page.round");
            assertThat(text("do.what")).doesNotContain("Learning");
            return null;
        });
    }
}
