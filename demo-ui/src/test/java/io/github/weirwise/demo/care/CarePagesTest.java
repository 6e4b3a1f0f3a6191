package io.github.weirwise.demo.care;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Pieces;
import io.github.weirwise.demo.panel.Slices;
import io.github.weirwise.demo.panel.Tabs;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.setup.LanternQuaySites;
import io.github.weirwise.setup.Question;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** Setting up and looking after: the pages say what the library says, and what is done is noted. */
class CarePagesTest {
    private static final Dress US =
            new Dress(new Words(new PhraseBook(Locale.ENGLISH, UnitSystem.US_CUSTOMARY)), Palette.LIGHT);

    private final Map<String, String> saved = new LinkedHashMap<>();
    private TankDesk desk;
    private Dress dress = Dress.USUAL;
    private Pieces pieces;
    private Tabs tabs;

    private void dress(Dress other) {
        dress = other;
        pieces.dress(other);
    }

    private void open() {
        Theme.install(Dress.USUAL.palette());
        desk = Sample.desk();
        desk.run(Duration.ofDays(9));
        Slices slices = new Slices(Background.AT_ONCE);
        pieces = new Pieces(slices);
        tabs = CarePages.of(
                () -> desk,
                pieces,
                new JPanel(),
                new OwnTank() {
                    @Override
                    public void open(Consumer<Installation> then) {
                        opened.ifPresent(then);
                    }

                    @Override
                    public void again(Consumer<Map<String, String>> form) {
                        form.accept(Map.of());
                    }

                    @Override
                    public void typed(Map<String, String> boxes) {
                        // What is kept is the window's.
                    }

                    @Override
                    public void checked(FitCheck check) {
                        // The hand-over is the window's.
                    }
                },
                (name, text) -> saved.put(name, text.get()),
                () -> dress);
        slices.start();
    }

    private Optional<Installation> opened = Optional.empty();

    private JTextField box(String name) {
        return Parts.named(tabs, name, JTextField.class);
    }

    private boolean isSaid(String name) {
        return Parts.all(tabs).stream()
                .anyMatch(part -> name.equals(part.getName())
                        && part.isVisible()
                        && part.getParent().isVisible());
    }

    private String said(String name) {
        assertThat(isSaid(name)).as(name).isTrue();
        return Parts.named(tabs, name, JTextArea.class).getText();
    }

    @Test
    void oneOwnTankIsTypedInCheckedAndSaved() {
        Parts.onEvents(() -> {
            open();
            tabs.turn("care.own");
            press("own.check");
            assertThat(said("own.said")).contains("needs a name");
            box("own.name").setText("Corner tank");
            box("site.TANK_RIM").setText("850");
            press("own.check");
            assertThat(Parts.named(tabs, "fit.site", JComboBox.class).getSelectedItem())
                    .isEqualTo("Your own: Corner tank");
            assertThat(list("fit").isVisible()).isTrue();
            press("own.save");
            Installation written = WeirwiseJson.readInstallation(saved.get("tank.json"));
            Installation from = LanternQuaySites.trainingTank();
            assertThat(written.name()).isEqualTo("Corner tank");
            assertThat(written.tank().rimMm()).isEqualTo(850);
            assertThat(written.returnLine().hasSiphonBreak()).isFalse();
            assertThat(written.stand().ratedKilograms()).isEmpty();
            assertThat(written.filter()).isEqualTo(from.filter());
            assertThat(written.pump()).isEqualTo(from.pump());
            assertThat(written.drainage().each().fittings())
                    .containsExactlyInAnyOrderElementsOf(from.drainage().each().fittings());
            tabs.turn("care.start");
            press("start.save");
            assertThat(saved.get("first-start.txt")).contains("Corner tank");
            return null;
        });
    }

    @Test
    void whatCannotBeTakenIsToldAtItsBoxInTheUnitsThatAreTyped() {
        Parts.onEvents(() -> {
            open();
            tabs.turn("care.own");
            box("own.name").setText("Corner tank");
            box("site.TANK_RIM").setText("700");
            box("site.HOSE_HOLDS").setText("six");
            box("site.DRAIN_PIPES").setText("1.5");
            assertThat(said("site.TANK_RIM.label")).as("told while typing").contains("780 to 6000 mm");
            assertThat(said("site.HOSE_HOLDS.label")).contains("\"six\" is not a number");
            assertThat(said("site.DRAIN_PIPES.label")).contains("does not go with the others");
            press("own.check");
            assertThat(said("own.said")).contains("not possible yet");
            box("site.HOSE_HOLDS").setText("5000");
            assertThat(said("site.HOSE_HOLDS.label")).contains("0.1 to 1000 L");
            dress(US);
            assertThat(said("site.TANK_RIM.label")).contains("30.71 to 236.2 in");
            return null;
        });
    }

    @Test
    void whatSavesFromAFloodIsNeverAssumed() {
        Parts.onEvents(() -> {
            open();
            tabs.turn("care.own");
            box("own.name").setText("Corner tank");
            press("own.save");
            Installation written = WeirwiseJson.readInstallation(saved.get("tank.json"));
            assertThat(LanternQuaySites.trainingTank().returnLine().hasSiphonBreak())
                    .isTrue();
            assertThat(written.returnLine().hasSiphonBreak()).isFalse();
            assertThat(written.stand().ratedKilograms()).isEmpty();
            assertThat(said("own.said")).as("the rest is told to be assumed").contains("assumed");
            return null;
        });
    }

    @Test
    void numbersStayExactThroughOtherUnitsAndTheWayThroughAFile() {
        Parts.onEvents(() -> {
            for (Installation site : LanternQuaySites.all()) {
                opened = Optional.of(site);
                open();
                tabs.turn("care.own");
                press("own.open");
                dress(US);
                assertThat(Double.parseDouble(box("site.TANK_LENGTH").getText()))
                        .isEqualTo(site.tank().lengthMm() / 25.4, org.assertj.core.data.Offset.offset(0.01));
                dress(Dress.USUAL);
                press("own.save");
                Installation again = WeirwiseJson.readInstallation(saved.get("tank.json"));
                assertThat(again.tank()).isEqualTo(site.tank());
                assertThat(again.filter()).isEqualTo(site.filter());
                assertThat(again.pump()).isEqualTo(site.pump());
                assertThat(again.returnLine().breakBelowCrestMm())
                        .isEqualTo(site.returnLine().breakBelowCrestMm());
                assertThat(again.stand()).isEqualTo(site.stand());
            }
            return null;
        });
    }

    private JList<?> list(String name) {
        return Parts.named(tabs, name + ".list", JList.class);
    }

    private String detail(String name) {
        return Parts.named(tabs, name + ".detail", JTextArea.class).getText();
    }

    private void press(String name) {
        Parts.named(tabs, name, JButton.class).doClick();
    }

    @Test
    void everyQuestionHasALineWithItsFitInWords() {
        Parts.onEvents(() -> {
            open();
            assertThat(list("fit").getModel().getSize()).isEqualTo(Question.values().length);
            Parts.named(tabs, "fit.site", JComboBox.class).setSelectedIndex(1);
            assertThat(LanternQuaySites.all().get(1).name()).contains("quarantine");
            list("fit").setSelectedIndex(Question.DRAIN_FULL.ordinal());
            assertThat(list("fit").getSelectedValue().toString()).startsWith("does not fit");
            assertThat(detail("fit")).contains("To change it:", "Source:");
            press("fit.save");
            assertThat(saved.get("fit-check.txt")).contains("Lantern Quay quarantine tank");
            return null;
        });
    }

    @Test
    void aStepOfTheFirstStartIsTickedOff() {
        Parts.onEvents(() -> {
            open();
            tabs.turn("care.start");
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
}
