package io.github.weirwise.demo.panel;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.ExpectWords;
import io.github.weirwise.report.Phrase;
import java.awt.Component;
import java.awt.Font;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/**
 * An advice: what to do, always in sight; under it cautions first, when to look again, what to expect, and the reasons to
 * unfold.
 */
public final class AdviceSheet extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Sheet content = new Sheet();
    private final JLabel mind = new Caption();
    private final Prose cautions = new Prose();
    private final Prose what = new Prose();
    private final JLabel wait = new Caption();
    private final Prose waiting = new Prose();
    private final JLabel expect = new Caption();
    private final Prose expected = new Prose();
    private final JLabel why = new Caption();
    private final ReasonTree reasons = new ReasonTree();
    private final JLabel ifNot = new Caption();
    private final Prose changes = new Prose();
    private transient Dress dress;

    /** An empty sheet. */
    public AdviceSheet(Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        setOpaque(false);
        add(what, "growx");
        row(mind, cautions);
        row(wait, waiting);
        row(expect, expected);
        row(ifNot, changes);
        content.add(why, "aligny top");
        content.add(reasons, "growx, wrap");
        JScrollPane scroll = Sheet.around(content);
        add(scroll, "grow, push, hmin 60");
        dress(dress);
    }

    private void row(JLabel label, Prose text) {
        content.add(label, "aligny top");
        content.add(text, "growx, wrap");
    }

    private void unfold(boolean there) {
        for (Component part :
                new Component[] {mind, cautions, wait, waiting, expect, expected, why, reasons, ifNot, changes}) {
            part.setVisible(there);
        }
    }

    /** Shows a sentence and no advice. */
    public void say(String sentence) {
        unfold(false);
        what.setText(sentence);
        reasons.clear();
    }

    /** Shows an advice; {@code clock} tells when to look again. */
    public void tell(Advice advice, Clock clock) {
        unfold(true);
        what.setText(dress.words().say(advice.what()));
        cautions.setText(advice.cautions().stream()
                .map(each -> "\u2022 " + dress.words().book().say(each))
                .collect(Collectors.joining("\n")));
        mind.setVisible(!advice.cautions().isEmpty());
        cautions.setVisible(!advice.cautions().isEmpty());
        waiting.setText(dress.words().say(clock.waiting(advice)));
        expected.setText(dress.words().say(ExpectWords.of(advice)));
        changes.setText(advice.wouldChangeIt().stream().map(this::bullet).collect(Collectors.joining("\n")));
        reasons.show(advice.why(), dress);
    }

    private String bullet(Phrase phrase) {
        return "\u2022 " + dress.words().say(phrase);
    }

    /** Other words or colours; what is shown is shown anew by whoever showed it. */
    public void dress(Dress other) {
        dress = other;
        Font plain = UIManager.getFont("Label.font");
        what.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * 1.15f));
        mind.setText(other.text("text.caution"));
        wait.setText(other.text("text.wait"));
        expect.setText(other.text("text.expect"));
        why.setText(other.text("text.why"));
        ifNot.setText(other.text("text.ifNot"));
        for (JLabel label : new JLabel[] {mind, wait, expect, why, ifNot}) {
            label.setForeground(other.palette().muted());
        }
        reasons.getAccessibleContext().setAccessibleName(other.text("step.reasons"));
    }
}
