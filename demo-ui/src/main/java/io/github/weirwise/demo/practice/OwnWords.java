package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Debrief;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JTextArea;

/** The trainee speaks first: three questions, and then the debrief. */
final class OwnWords extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final Prose about = new Prose();
    private final List<Prose> asks = new ArrayList<>();
    private final List<JTextArea> answers = new ArrayList<>();
    private final JButton show = new JButton();

    OwnWords(PracticeDesk desk, Consumer<Debrief> made, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        show.setName("debrief.show");
        show.addActionListener(e -> make(desk, made));
        beside(show);
        body().add(about, "growx, wrap 10");
        for (int i = 0; i < Debrief.OWN_WORDS.size(); i++) {
            Prose ask = new Prose();
            JTextArea answer = new JTextArea(2, 20);
            answer.setName("debrief.own." + (i + 1));
            answer.setLineWrap(true);
            answer.setWrapStyleWord(true);
            // Tab leaves the box; a new line is no use in a short answer.
            answer.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            answer.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
            asks.add(ask);
            answers.add(answer);
            body().add(ask, "growx, wrap 2");
            body().add(new javax.swing.JScrollPane(answer), "growx, h 48:56:, wrap 8");
        }
        dress(dress);
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

    @Override
    public void dress(Dress other) {
        head(other.text("debrief.ownTitle"));
        paper(other.palette());
        about.setText(other.text("debrief.about"));
        for (int i = 0; i < asks.size(); i++) {
            String words = other.words().say(Debrief.OWN_WORDS.get(i));
            asks.get(i).setText(words);
            answers.get(i).getAccessibleContext().setAccessibleName(words);
        }
        Buttons.name(show, other, "debrief.show");
    }
}
