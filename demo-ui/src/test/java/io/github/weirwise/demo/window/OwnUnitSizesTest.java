package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Fits;
import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.chart.ChartView;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.FileDesk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.start.UnitForm;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An own unit with a name of 200 letters, on small and large screens, in both systems of units, light and dark. */
class OwnUnitSizesTest {
    @TempDir
    Path folder;

    private MainPanel panel;
    private JComponent root;
    private int width;
    private int height;

    private FileDesk journal(boolean read) throws IOException {
        SkimmerUnit like = LanternQuay.jetty();
        SkimmerUnit unit = new SkimmerUnit(
                "The skimmer behind the long wall of the lantern fishes "
                        .repeat(4)
                        .substring(0, 200),
                like.columns(),
                like.column(),
                like.weir(),
                like.cupMl(),
                like.cupDrainLitresPerHour(),
                like.ratedFlowLitresPerHour(),
                like.ratedAirLitresPerHour(),
                like.traits(),
                like.target(),
                like.layout());
        FileDesk desk = FileDesk.create(folder.resolve("reef.jsonl"), unit, unit.ratedSettings(205), Clock.systemUTC());
        if (read) {
            var before = desk.now().minus(Duration.ofHours(24));
            desk.note(new Reading(
                    before,
                    "",
                    List.of(
                            new Observation.FunnelLevel(12),
                            new Observation.CupVolume(210, 24, false),
                            new Observation.Darkness(DarknessWord.LIGHT_TEA),
                            new Observation.FoamLook(FoamLookWord.STREAMING))));
            desk.note(new Forecast(before, desk.now(), new Range(5, 9), new Range(20, 60)).asNote());
        }
        return desk;
    }

    @ParameterizedTest
    @CsvSource({
        "1024,700,METRIC,false,true",
        "1024,700,US_CUSTOMARY,true,false",
        "1200,800,METRIC,true,true",
        "1600,1200,US_CUSTOMARY,false,true",
        "2560,1440,METRIC,false,true"
    })
    void nothingIsPushedOutOrCut(int wide, int high, UnitSystem units, boolean dark, boolean read) {
        width = wide;
        height = high;
        Parts.onEvents(() -> {
            Dress dress = new Dress(new Words(new PhraseBook(Locale.ENGLISH, units)), Palette.of(dark));
            Theme.install(dress.palette());
            panel = new MainPanel(Sample::desk, Sample.RAISE_FOUR, Background.AT_ONCE, Asking.NOBODY, dress);
            root = panel;
            panel.tune(journal(read));
            look("read");
            press("read.more");
            look("read, more");
            press("read.note");
            look("do");
            assertThat(Parts.all(panel).stream().anyMatch(part -> part instanceof ChartView && isShown(part)))
                    .as("the last days stand under the round where the screen is high enough")
                    .isEqualTo(high >= 1200);
            press("do.done");
            look("leave");
            for (String page : List.of(
                    "round.page.sums",
                    "round.page.days",
                    "round.page.score",
                    "round.page.learn",
                    "round.page.journal")) {
                press(page);
                if (page.equals("round.page.learn")) {
                    press("learn.plan");
                }
                look(page);
                Parts.all(panel).stream()
                        .filter(part -> part instanceof ChartView && isShown(part))
                        .forEach(chart -> assertThat(chart.getHeight())
                                .as("the chart takes the room there is")
                                .isGreaterThan(2 * height / 5));
            }
            panel.choose("use.start");
            look("start");
            panel.choose("use.care");
            press("care.own");
            look("own tank");
            UnitForm form = new UnitForm(dress);
            width = form.getPreferredSize().width;
            height = Math.max(580, form.getPreferredSize().height);
            root = form;
            look("unit form");
            Parts.all(form).stream()
                    .filter(part -> part instanceof JTextField && !"unit.name".equals(part.getName()))
                    .forEach(part -> ((JTextField) part).setText("99999"));
            look("unit form, all wrong");
            return null;
        });
    }

    private void press(String name) {
        Parts.named(panel, name, AbstractButton.class).doClick();
    }

    private boolean isShown(Component part) {
        for (Component each = part; each != root; each = each.getParent()) {
            if (each == null || !each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private void look(String where) {
        WindowPicture.of(root, width, height, 1);
        assertThat(Fits.faults(root)).as(where).isEmpty();
    }
}
