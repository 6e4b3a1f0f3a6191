package io.github.weirwise.demo.panel;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a person types and picks becomes the reading they meant, or a sentence that says what is wrong. */
class SeeCardTest {
    private TankDesk desk;
    private SeeCard card;

    private void open(UnitSystem units) {
        Theme.install(Palette.LIGHT);
        desk = Sample.desk();
        card = new SeeCard(desk, new Dress(new Words(new PhraseBook(Locale.ENGLISH, units)), Palette.LIGHT));
    }

    private void type(String box, String text) {
        Parts.named(card, box, JTextField.class).setText(text);
    }

    private Reading noted() {
        Parts.named(card, "see.note", JButton.class).doClick();
        return desk.journal().last(Reading.class).orElseThrow();
    }

    private String said() {
        return Parts.named(card, "see.said", JTextArea.class).getText();
    }

    @Test
    void rulerCupColourAndFoamBecomeOneReading() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            type("see.level", "-3.5");
            type("see.cup", "40");
            type("see.hours", "20");
            Parts.named(card, "see.darkness.2000.0", JToggleButton.class).doClick();
            Parts.named(card, "see.foam.STIFF", JToggleButton.class).doClick();
            assertThat(noted().observations())
                    .containsExactly(
                            new Observation.FunnelLevel(-3.5),
                            new Observation.CupVolume(40, 20, false),
                            new Observation.DarknessMatch(2000),
                            new Observation.FoamLook(FoamLookWord.STIFF));
            assertThat(Parts.named(card, "see.level", JTextField.class).getText())
                    .isEmpty();
            return null;
        });
    }

    @Test
    void typedInchesAreNotedAsMillimetres() {
        Parts.onEvents(() -> {
            open(UnitSystem.US_CUSTOMARY);
            type("see.level", "1");
            assertThat(noted().find(Observation.FunnelLevel.class).orElseThrow().mm())
                    .isCloseTo(25.4, Offset.offset(1e-9));
            return null;
        });
    }

    @Test
    void whatIsNoNumberIsSaidAndNothingIsNoted() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            int before = desk.journal().entries().size();
            for (String wrong : new String[] {"abc", "1e999", "NaN", "--3", "9999"}) {
                type("see.level", wrong);
                Parts.named(card, "see.note", JButton.class).doClick();
                assertThat(said()).as(wrong).isNotBlank();
            }
            type("see.level", "");
            type("see.cup", "50");
            Parts.named(card, "see.note", JButton.class).doClick();
            assertThat(said()).as("cup without hours").isNotBlank();
            type("see.cup", "");
            Parts.named(card, "see.note", JButton.class).doClick();
            assertThat(said()).as("nothing at all").isNotBlank();
            assertThat(desk.journal().entries()).hasSize(before);
            return null;
        });
    }

    @Test
    void aDecimalCommaIsUnderstood() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            type("see.level", "12,5");
            assertThat(noted().observations()).containsExactly(new Observation.FunnelLevel(12.5));
            return null;
        });
    }

    @Test
    void happeningsAndRarerMeasuresAreNotedToo() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            Parts.named(card, "see.more", JToggleButton.class).doClick();
            Parts.named(card, "more.measure", JComboBox.class).setSelectedIndex(1);
            type("more.value", "21");
            Parts.named(card, "more.happening", JComboBox.class).setSelectedIndex(2);
            assertThat(noted().observations()).containsExactly(new Observation.HeadOverCrest(21));
            assertThat(desk.journal().last(Happening.class).orElseThrow().kind())
                    .isEqualTo(Happening.Kind.FED);
            return null;
        });
    }
}
