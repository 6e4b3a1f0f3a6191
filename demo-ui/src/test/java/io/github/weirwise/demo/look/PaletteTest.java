package io.github.weirwise.demo.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import javax.swing.UIManager;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contrast by the formula of WCAG 2.2 (relative luminance; 4.5:1 for text, 3:1 for lines and marks; from memory). */
class PaletteTest {
    private static final double TEXT = 4.5;
    private static final double MARK = 3;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void textCanBeRead(boolean dark) {
        Palette palette = Palette.of(dark);
        for (Color behind : new Color[] {palette.paper(), palette.ground()}) {
            for (Color text : new Color[] {palette.ink(), palette.muted(), palette.accent()}) {
                assertThat(contrast(text, behind)).isGreaterThanOrEqualTo(TEXT);
            }
        }
        assertThat(contrast(palette.danger(), palette.paper())).isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void linesAndMarksCanBeSeen(boolean dark) {
        Palette palette = Palette.of(dark);
        for (Color line : new Color[] {palette.accent(), palette.second(), palette.good(), palette.glass()}) {
            assertThat(contrast(line, palette.paper())).isGreaterThanOrEqualTo(MARK);
        }
        assertThat(contrast(palette.accent(), palette.water())).isGreaterThanOrEqualTo(MARK);
        assertThat(contrast(palette.foamLine(), palette.foam())).isGreaterThan(2);
    }

    /** The button that Enter presses, in whatever state it is. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theDefaultButtonCanBeReadInEveryState(boolean dark) {
        Theme.install(Palette.of(dark));
        Color words = UIManager.getColor("Button.default.foreground");
        for (String state : new String[] {"background", "focusedBackground", "hoverBackground", "pressedBackground"}) {
            assertThat(contrast(words, UIManager.getColor("Button.default." + state)))
                    .as(state)
                    .isGreaterThanOrEqualTo(TEXT);
        }
    }

    private static double contrast(Color one, Color other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
