package io.github.weirwise.demo.round;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a person types and picks becomes the reading they meant, or a sentence that says what is wrong. */
class ReadCardTest {
    private TankDesk desk;
    private ReadCard card;

    private void open(UnitSystem units) {
        Theme.install(Palette.LIGHT);
        desk = Sample.desk();
        Dress dress = new Dress(new Words(new PhraseBook(Locale.ENGLISH, units)), Palette.LIGHT);
        Map<LookKind, Ask> asks = new EnumMap<>(LookKind.class);
        ReadCard.USUAL.forEach(look -> asks.put(look, Ask.of(look, dress)));
        card = new ReadCard(desk, asks, () -> {}, dress);
    }

    private void type(String box, String text) {
        Parts.named(card, box, JTextField.class).setText(text);
    }

    private Reading noted() {
        Parts.named(card, "read.note", JButton.class).doClick();
        return desk.journal().last(Reading.class).orElseThrow();
    }

    private String said() {
        return Parts.named(card, "read.said", JTextArea.class).getText();
    }

    @Test
    void rulerCupColourAndFoamBecomeOneReading() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            type("ask.FUNNEL_LEVEL", "-3.5");
            type("ask.CUP_VOLUME", "40");
            type("ask.CUP_HOURS", "20");
            Parts.named(card, "ask.DARKNESS.DARK_TEA", JToggleButton.class).doClick();
            Parts.named(card, "ask.FOAM_LOOK.STIFF", JToggleButton.class).doClick();
            assertThat(noted().observations())
                    .containsExactly(
                            new Observation.FunnelLevel(-3.5),
                            new Observation.CupVolume(40, 20, false),
                            new Observation.Darkness(DarknessWord.DARK_TEA),
                            new Observation.FoamLook(FoamLookWord.STIFF));
            assertThat(Parts.named(card, "ask.FUNNEL_LEVEL", JTextField.class).getText())
                    .isEmpty();
            return null;
        });
    }

    @Test
    void typedInchesAreNotedAsMillimetres() {
        Parts.onEvents(() -> {
            open(UnitSystem.US_CUSTOMARY);
            type("ask.FUNNEL_LEVEL", "1");
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
                type("ask.FUNNEL_LEVEL", wrong);
                Parts.named(card, "read.note", JButton.class).doClick();
                assertThat(said()).as(wrong).isNotBlank();
            }
            type("ask.FUNNEL_LEVEL", "");
            type("ask.CUP_VOLUME", "50");
            type("ask.CUP_HOURS", "");
            Parts.named(card, "read.note", JButton.class).doClick();
            assertThat(said()).as("cup without hours").isNotBlank();
            assertThat(said()).contains("collected in: a number is missing");
            type("ask.CUP_HOURS", "0");
            Parts.named(card, "read.note", JButton.class).doClick();
            assertThat(said())
                    .as("box, limits and unit as typed")
                    .isEqualTo("collected in: 0 h is not possible; 0.05 to 1000 h is.");
            assertThat(desk.journal().entries()).hasSize(before);
            return null;
        });
    }

    @Test
    void aDecimalCommaIsUnderstood() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            type("ask.FUNNEL_LEVEL", "12,5");
            assertThat(noted().observations()).containsExactly(new Observation.FunnelLevel(12.5));
            return null;
        });
    }

    @Test
    void happeningsAndRarerMeasuresAreNotedToo() {
        Parts.onEvents(() -> {
            open(UnitSystem.METRIC);
            Parts.named(card, "read.more", JToggleButton.class).doClick();
            Parts.named(card, "more.look", JComboBox.class).setSelectedIndex(1);
            type("ask.HEAD_OVER_CREST", "21");
            Parts.named(card, "more.happening", JComboBox.class).setSelectedIndex(2);
            assertThat(noted().observations()).containsExactly(new Observation.HeadOverCrest(21));
            assertThat(desk.journal().last(Happening.class).orElseThrow().kind())
                    .isEqualTo(Happening.Kind.FED);
            return null;
        });
    }
}
