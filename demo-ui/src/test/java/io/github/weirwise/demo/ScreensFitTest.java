package io.github.weirwise.demo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Theme;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.practice.TrainerPanel;
import io.github.weirwise.demo.window.MainPanel;
import io.github.weirwise.demo.window.WindowPicture;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.UnitSystem;
import java.awt.Container;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On no screen of the documents is anything cut or covered, whatever the size of the window, the units and the colours. */
class ScreensFitTest {
    private static final List<Dimension> SIZES = List.of(
            new Dimension(1024, 700), new Dimension(1200, 800), new Dimension(1600, 1200), new Dimension(2560, 1440));

    static Stream<Screen> screens() {
        return ScreensRun.SCREENS.stream();
    }

    @ParameterizedTest
    @MethodSource("screens")
    void nothingIsCutOrCovered(Screen screen) {
        List<String> faults = new ArrayList<>();
        Dress other = new Dress(new Words(new PhraseBook(Locale.ENGLISH, UnitSystem.US_CUSTOMARY)), Palette.DARK);
        Parts.onEvents(() -> {
            Container content = new ScreensRun(Front.DOOR, System.out).content(screen, Dress.USUAL);
            look(content, screen.name(), faults);
            Theme.install(other.palette());
            SwingUtilities.updateComponentTreeUI(content);
            if (content instanceof MainPanel panel) {
                panel.dress(other);
            } else {
                ((TrainerPanel) content).dress(other);
            }
            look(content, screen.name() + " US dark", faults);
            return null;
        });
        assertThat(faults).isEmpty();
    }

    private static void look(Container content, String where, List<String> faults) {
        for (Dimension size : SIZES) {
            content.setSize(size);
            for (int round = 0; round < 5; round++) {
                WindowPicture.lay(content);
            }
            Fits.faults(content)
                    .forEach(fault -> faults.add(where + " " + size.width + " x " + size.height + ": " + fault));
        }
    }
}
