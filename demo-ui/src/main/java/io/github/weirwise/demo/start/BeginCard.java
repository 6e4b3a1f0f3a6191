package io.github.weirwise.demo.start;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;

/** A heading, what it is about in a sentence, and buttons that lead there. */
public final class BeginCard extends Card {
    private static final long serialVersionUID = 1L;

    private final String key;
    private final Prose about = new Prose();
    private final List<JButton> buttons = new ArrayList<>();

    /** @param ways text and name of each button, and what it does */
    public BeginCard(String key, Map<String, Runnable> ways, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.key = key;
        body().add(about, "growx, wmin 0, wrap");
        JPanel row = Buttons.row();
        ways.forEach((name, way) -> {
            JButton button = new JButton();
            Buttons.set(button, name, way);
            buttons.add(button);
            row.add(button);
        });
        body().add(row, "growx");
        dress(dress);
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        head(dress.text("start.card." + key));
        paper(dress.palette());
        about.setText(dress.text("start.about." + key));
        about.setForeground(dress.palette().ink());
        Buttons.name(dress, buttons.toArray(JButton[]::new));
    }
}
