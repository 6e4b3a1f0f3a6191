package io.github.weirwise.demo.care;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareState;
import io.github.weirwise.commissioning.LanternQuaySites;
import io.github.weirwise.commissioning.Question;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.panel.Slices;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

/** Setting up and looking after: the pages say what the library says, and what is done is noted. */
class CarePagesTest {
    private final Map<String, String> saved = new LinkedHashMap<>();
    private TankDesk desk;
    private CarePages pages;
    private JPanel panel;

    private void open() {
        Theme.install(Dress.USUAL.palette());
        desk = Sample.desk();
        desk.run(Duration.ofDays(9));
        Slices slices = new Slices(Background.AT_ONCE);
        pages = new CarePages(() -> desk, slices, (name, text) -> saved.put(name, text.get()), Dress.USUAL);
        slices.start();
        panel = (JPanel) pages.panel();
    }

    private JList<?> list(String name) {
        return Parts.named(panel, name + ".list", JList.class);
    }

    private String detail(String name) {
        return Parts.named(panel, name + ".detail", JTextArea.class).getText();
    }

    private void press(String name) {
        Parts.named(panel, name, JButton.class).doClick();
    }

    @Test
    void everyQuestionHasALineWithItsFitInWords() {
        Parts.onEvents(() -> {
            open();
            assertThat(list("fit").getModel().getSize()).isEqualTo(Question.values().length);
            Parts.named(panel, "fit.site", JComboBox.class).setSelectedIndex(1);
            assertThat(LanternQuaySites.all().get(1).name()).contains("quarantine");
            list("fit").setSelectedIndex(Question.DRAIN_FULL.ordinal());
            assertThat(list("fit").getSelectedValue().toString()).startsWith("does not fit");
            assertThat(detail("fit")).contains("Change:", "Source:");
            press("fit.save");
            assertThat(saved.get("fit-check.txt")).contains("Lantern Quay quarantine tank");
            return null;
        });
    }

    @Test
    void aStepOfTheFirstStartIsTickedOff() {
        Parts.onEvents(() -> {
            open();
            pages.show("care.start");
            list("start").setSelectedIndex(0);
            assertThat(detail("start")).contains("You should see:", "If not:");
            press("start.tick");
            assertThat(list("start").getModel().getElementAt(0).toString()).startsWith("Step 1, done");
            press("start.tick");
            assertThat(list("start").getModel().getElementAt(0).toString()).startsWith("Step 1:");
            press("start.save");
            assertThat(saved.get("first-start.txt")).contains("1. ");
            return null;
        });
    }

    @Test
    void aTaskThatIsDoneIsNotedAndNoLongerDue() {
        Parts.onEvents(() -> {
            open();
            pages.show("care.due");
            CareItem first = CarePlan.of(desk.journal(), desk.now()).items().get(0);
            assertThat(first.state()).isGreaterThanOrEqualTo(CareState.DUE);
            list("due").setSelectedIndex(0);
            press("due.done");
            CareItem after = CarePlan.of(desk.journal(), desk.now()).item(first.task());
            assertThat(after.lastDone()).contains(desk.now());
            assertThat(after.state()).isLessThan(CareState.DUE);
            press("due.save");
            assertThat(saved.get("care.ics")).startsWith("BEGIN:VCALENDAR");
            press("due.handOver");
            assertThat(saved.get("hand-over.html"))
                    .startsWith("<!DOCTYPE html>")
                    .contains(desk.unit().name());
            return null;
        });
    }
}
