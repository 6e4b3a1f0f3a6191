package io.github.weirwise.demo.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyFloat;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.UnitSystem;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written into the picture can be read at every size that the window gives it. */
class WrittenTest {
    private final Map<String, Rectangle2D> written = new LinkedHashMap<>();

    /** Notes where each text goes. */
    private Graphics2D pen() {
        Graphics2D real = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        Graphics2D pen = mock(Graphics2D.class);
        doAnswer(call -> {
                    real.setFont(call.getArgument(0));
                    return null;
                })
                .when(pen)
                .setFont(org.mockito.ArgumentMatchers.any(Font.class));
        when(pen.getFontMetrics()).thenAnswer(call -> real.getFontMetrics());
        doAnswer(call -> {
                    FontMetrics metrics = real.getFontMetrics();
                    String text = call.getArgument(0);
                    float x = call.getArgument(1);
                    float y = call.getArgument(2);
                    double high = 0.7 * metrics.getAscent();
                    Rectangle2D box = new Rectangle2D.Double(x, y - high, metrics.stringWidth(text), high);
                    written.put(text + " #" + written.size(), box);
                    return null;
                })
                .when(pen)
                .drawString(anyString(), anyFloat(), anyFloat());
        return pen;
    }

    @ParameterizedTest
    @CsvSource({"490, 270", "490, 300", "490, 400", "590, 420", "620, 560", "900, 900", "1200, 800"})
    void noTextLiesOverAnother(int width, int height) {
        for (SkimmerUnit unit : LanternQuay.units()) {
            for (UnitSystem units : UnitSystem.values()) {
                written.clear();
                Scene scene = new Scene(
                                unit,
                                unit.ratedSettings(unit.weir().highestCrestMm()),
                                Scene.wanted(
                                                unit,
                                                unit.ratedSettings(unit.weir().highestCrestMm()))
                                        .point(),
                                205,
                                Painted.collecting(170, 0).collected(),
                                java.util.Optional.empty(),
                                true)
                        .expecting(new Range(12, 17), new Range(180, 240));
                Words words = new Words(new io.github.weirwise.report.PhraseBook(java.util.Locale.ENGLISH, units));
                Frame frame = Frame.make(
                        new Frame.Order(
                                scene,
                                width,
                                height,
                                1,
                                Palette.LIGHT,
                                words,
                                new Font(Font.SANS_SERIF, Font.PLAIN, 13),
                                true),
                        0);
                frame.write(new Ink(pen()));
                assertThat(written).hasSizeGreaterThan(15);
                written.forEach((text, box) -> written.forEach((other, otherBox) -> {
                    boolean over = !text.equals(other) && box.intersects(otherBox);
                    assertThat(over)
                            .as(
                                    "%s over %s, %s %s, %d x %d: %s %s",
                                    text, other, unit.name(), units, width, height, box, otherBox)
                            .isFalse();
                }));
            }
        }
    }

    /** However narrow the picture, an alarm can be read to its end. */
    @ParameterizedTest
    @ValueSource(ints = {240, 360, 490, 620})
    void everyAlarmIsReadToItsEnd(int width) {
        Scene scene = Painted.collecting(4000, 0.3);
        Section section = new Section(scene.unit());
        View view = View.fit(section.bounds(), new Rectangle2D.Double(8, 8, width - 16.0, 300));
        Brush brush = new Brush(section, view, Palette.LIGHT, Words.ENGLISH, new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        List<Sight.Alarm> all = List.of(Sight.Alarm.values());
        new AlarmPainter(brush).paint(new Ink(pen()), all, new Rectangle2D.Double(8, 0, width - 16.0, 400));
        assertThat(written).hasSizeGreaterThanOrEqualTo(all.size());
        assertThat(written.values()).allSatisfy(box -> {
            assertThat(box.getMinX()).isGreaterThanOrEqualTo(8);
            assertThat(box.getMaxX()).isLessThanOrEqualTo(width - 8);
            assertThat(box.getMaxY()).isLessThanOrEqualTo(400);
        });
    }
}
