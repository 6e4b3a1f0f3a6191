package io.github.weirwise.demo.panel;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Theme;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.image.BufferedImage;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

/** Parts that lay out text or screens. */
class LayoutPartsTest {
    private static final String LONG =
            "foam that creeps up the neck is what is wanted, and it wants time to settle ".repeat(4);

    @Test
    void aTextIsAsHighAsItsWidthMakesItAndAskingChangesNothing() {
        Parts.onEvents(() -> {
            Theme.install(Dress.USUAL.palette());
            Prose prose = new Prose();
            prose.setText(LONG);
            int usual = prose.getPreferredSize().height;
            assertThat(prose.getSize()).as("asking gives it no size").isEqualTo(new Dimension(0, 0));
            prose.setBounds(0, 0, 190, 10);
            int narrow = prose.getPreferredSize().height;
            assertThat(narrow).isGreaterThan(usual);
            prose.setBounds(0, 0, 0, 0);
            assertThat(prose.getPreferredSize().height)
                    .as("a hidden text keeps its height, else it would be laid out for ever")
                    .isEqualTo(narrow);
            return null;
        });
    }

    @Test
    void linesBreakAtSpacesAndLoseNothing() {
        Parts.onEvents(() -> {
            FontMetrics metrics = new JLabel().getFontMetrics(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
            var lines = WrappedLine.broken(LONG.strip(), metrics, 200);
            assertThat(lines)
                    .hasSizeGreaterThan(3)
                    .allSatisfy(line -> assertThat(metrics.stringWidth(line)).isLessThanOrEqualTo(200));
            assertThat(String.join(" ", lines)).isEqualTo(LONG.strip());
            assertThat(WrappedLine.broken("unbreakablelongword", metrics, 20)).containsExactly("unbreakablelongword");
            return null;
        });
    }

    @Test
    void aHiddenScreenIsLaidOutBeforeItIsTurnedTo() {
        Parts.onEvents(() -> {
            Stack stack = new Stack();
            JPanel first = new JPanel();
            JPanel second = new JPanel();
            JLabel inside = new JLabel("inside");
            second.add(inside);
            stack.setSize(300, 200);
            stack.hold(first);
            stack.keep(second);
            stack.doLayout();
            assertThat(second.getParent().isVisible()).isFalse();
            assertThat(second.getSize()).as("hidden, so left alone").isEqualTo(new Dimension(0, 0));
            stack.settle();
            assertThat(second.getSize()).isEqualTo(new Dimension(300, 200));
            stack.hold(second);
            assertThat(first.getParent().isVisible()).isFalse();
            assertThat(second.getParent().isVisible()).isTrue();
            assertThat(stack.getPreferredSize()).isEqualTo(second.getPreferredSize());
            stack.drop(first);
            assertThat(stack.getComponents()).containsExactly(second.getParent());
            return null;
        });
    }

    @Test
    void proseIsNeverShortOfALineWhateverItsWidth() {
        String words =
                "The water stands low in the column, well under the height that the sheet wants over the funnel base. "
                        + "What does that do to the foam?";
        Parts.onEvents(() -> {
            for (int width = 250; width < 700; width++) {
                Prose prose = new Prose();
                prose.setText(words);
                prose.setBounds(0, 0, width, 2);
                int high = prose.getPreferredSize().height;
                prose.setBounds(0, 0, width, high);
                prose.paint(new BufferedImage(width, high, BufferedImage.TYPE_INT_RGB).createGraphics());
                assertThat(prose.modelToView2D(words.length()).getMaxY())
                        .as("foot of the last line at " + width)
                        .isLessThanOrEqualTo(high);
            }
            return null;
        });
    }
}
