package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.report.Phrase;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A line on top of everything that says what went wrong and stays until it is read. */
final class TroubleBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Prose text = new Prose();
    private final JButton close = new JButton();
    private transient Optional<Phrase> phrase = Optional.empty();
    private transient Dress dress;

    TroubleBar(Dress dress) {
        super(new MigLayout("insets 4 12 4 6, fillx", "[grow,fill][]"));
        this.dress = dress;
        text.setName("trouble");
        Buttons.set(close, "trouble.close", () -> setVisible(false));
        add(text, "wmin 0");
        add(close);
        setVisible(false);
        dress(dress);
    }

    void tell(Phrase trouble) {
        phrase = Optional.of(trouble);
        String before = text.getText();
        show(trouble);
        setVisible(true);
        getAccessibleContext()
                .firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, text.getText());
    }

    /** It is over; what was told meanwhile stays. */
    void withdraw(Phrase trouble) {
        if (phrase.filter(trouble::equals).isPresent()) {
            setVisible(false);
        }
    }

    private void show(Phrase trouble) {
        text.setText(dress.words().say(trouble));
        getAccessibleContext().setAccessibleDescription(text.getText());
    }

    void dress(Dress other) {
        dress = other;
        setBackground(other.palette().paper());
        text.setForeground(other.palette().danger());
        setBorder(BorderFactory.createLineBorder(other.palette().danger(), 1, true));
        Buttons.name(other, close);
        phrase.ifPresent(this::show);
    }
}
