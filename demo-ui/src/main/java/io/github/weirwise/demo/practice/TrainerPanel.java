package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The trainer's desk, for a window of its own on a second screen; never on the trainee's. */
public final class TrainerPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final transient List<PracticePage> parts;

    /** The desk of a session. */
    public TrainerPanel(PracticeDesk desk, Dress dress) {
        super(new MigLayout("insets 12, fill, wrap 1, gapy 10", "[grow,fill]", "[][][grow,fill]"));
        this.desk = desk;
        TruthCard truth = new TruthCard(dress);
        IncidentCard hand = new IncidentCard(desk, dress);
        StepsCard steps = new StepsCard(desk, dress);
        parts = List.of(truth, hand, steps);
        add(truth, "growx, hmin pref");
        add(hand, "growx");
        add(steps, "grow, push");
        desk.onChange(this::refresh);
        dress(dress);
    }

    /** Shows what is so now. */
    public void refresh() {
        desk.moment().ifPresent(moment -> parts.forEach(part -> part.show(moment)));
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        setBackground(dress.palette().ground());
        parts.forEach(part -> part.dress(dress));
        refresh();
    }
}
