package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.practice.Debrief;
import java.awt.BorderLayout;
import java.util.function.Consumer;
import javax.swing.JPanel;

/** Before the debrief the trainee speaks. */
final class DebriefPage extends JPanel implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final OwnWords own;

    DebriefPage(PracticeDesk desk, Consumer<Debrief> made, Dress dress) {
        super(new BorderLayout());
        setOpaque(false);
        own = new OwnWords(() -> make(desk, made), dress);
        add(own);
    }

    private void make(PracticeDesk desk, Consumer<Debrief> made) {
        own.offer(false);
        desk.debrief(debrief -> {
            own.offer(true);
            made.accept(debrief);
        });
    }

    @Override
    public void show(Moment moment) {
        own.offer(true);
    }

    @Override
    public void dress(Dress other) {
        own.dress(other);
    }
}
