package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Debrief;
import io.github.weirwise.report.Phrase;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JTextArea;

/** The trainee speaks first: three questions, and then the debrief. */
final class OwnWords extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final Prose about = new Prose();
    private final JButton show;

    OwnWords(PracticeDesk desk, Consumer<Debrief> made, Dress dress) {
        super("debrief.ownTitle", "[grow,fill]", "", dress);
        show = button("debrief.show", () -> make(desk, made));
        onDress(other -> about.setText(other.text("debrief.about")));
        beside(show);
        body().add(about, "growx, wrap 10");
        for (Phrase words : Debrief.OWN_WORDS) {
            Prose ask = new Prose();
            JTextArea answer = box("debrief.own." + (Debrief.OWN_WORDS.indexOf(words) + 1), 2);
            onDress(other -> {
                ask.setText(other.words().say(words));
                answer.getAccessibleContext().setAccessibleName(ask.getText());
            });
            body().add(ask, "growx, wrap 2");
            body().add(new javax.swing.JScrollPane(answer), "growx, h 48:56:, wrap 8");
        }
        dress(dress);
    }

    /** A box for some words of one's own; Tab leaves it. */
    static JTextArea box(String name, int rows) {
        JTextArea box = new JTextArea(rows, 20);
        box.setName(name);
        box.setLineWrap(true);
        box.setWrapStyleWord(true);
        box.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        box.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return box;
    }

    /** While the debrief is made the button rests. */
    private void make(PracticeDesk desk, Consumer<Debrief> made) {
        show.setEnabled(false);
        desk.debrief(debrief -> {
            show.setEnabled(true);
            made.accept(debrief);
        });
    }

    @Override
    public void show(Moment moment) {
        show.setEnabled(true);
    }
}
