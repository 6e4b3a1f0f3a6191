package io.github.weirwise.demo.chart;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.accessibility.AccessibleRole;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.Test;

/** Every chart has words and a table of the same numbers. */
class ChartCardTest {
    private static final SkimmerUnit UNIT = LanternQuay.jetty();

    private static ResponseData drawing() {
        return new Sweep()
                .of(
                        UNIT,
                        UNIT.ratedSettings(205),
                        UNIT.ratedSettings(205),
                        OperatingPoint.of(UNIT, UNIT.ratedSettings(205)),
                        100);
    }

    @Test
    void theTableHasARowForEachPoint() {
        Parts.onEvents(() -> {
            Theme.install(Palette.LIGHT);
            ChartCard card = new ChartCard("response", drawing(), Dress.USUAL);
            Parts.named(card, "response.asTable", JToggleButton.class).doClick();
            JTable table = Parts.named(card, "response.table", JTable.class);
            assertThat(table.getRowCount()).isEqualTo(drawing().points().size());
            assertThat(table.getColumnCount()).isEqualTo(4);
            assertThat(table.getValueAt(0, 0).toString()).isEqualTo("165 mm");
            return null;
        });
    }

    @Test
    void itIsTold() {
        ChartView view = new ChartView("response", drawing(), Dress.USUAL);
        assertThat(view.getAccessibleContext().getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        assertThat(view.getAccessibleContext().getAccessibleName()).isNotBlank();
        assertThat(view.getAccessibleContext().getAccessibleDescription()).contains("205 mm", "mL/day");
    }

    @Test
    void itIsTheSameChartInBothSystemsOfUnits() {
        Dress us = new Dress(new Words(new PhraseBook(Locale.ENGLISH, UnitSystem.US_CUSTOMARY)), Palette.LIGHT);
        assertThat(drawing().describe(us.words())).contains("in", "fl oz/day").doesNotContain("mm");
        assertThat(colours(us)).contains(Palette.LIGHT.accent().getRGB());
    }

    @Test
    void lineAndTodayAreDrawnInTheirColours() {
        assertThat(colours(Dress.USUAL))
                .contains(
                        Palette.LIGHT.accent().getRGB(), Palette.LIGHT.second().getRGB());
        Dress dark = new Dress(Words.ENGLISH, Palette.DARK);
        assertThat(colours(dark)).contains(Palette.DARK.paper().getRGB()).doesNotContain(Color.WHITE.getRGB());
    }

    private static Set<Integer> colours(Dress dress) {
        ChartView view = new ChartView("response", drawing(), dress);
        view.setSize(480, 220);
        BufferedImage image = new BufferedImage(480, 220, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        view.paint(graphics);
        graphics.dispose();
        Set<Integer> colours = new TreeSet<>();
        for (int x = 0; x < 480; x++) {
            for (int y = 0; y < 220; y++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }
}
