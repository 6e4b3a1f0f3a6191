package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Tabs;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionRecord;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The trainer's desk, in a window of its own: the lesson, what is hidden and can be done while it is played, and the group. */
public final class TrainerPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String WORK = "trainer.page.work";

    /** What the desk needs of the window; without one it does without. */
    public interface Deeds {
        /** Opens the file of a scenario. */
        default void scenario(Consumer<Scenario> then) {}

        /** Opens the file of a session. */
        default void session(Consumer<SessionRecord> then) {}

        /** A session begins: the trainee's window turns to it. */
        default void begun() {}
    }

    private final transient PracticeDesk desk;
    private final ChoosePage lesson;
    private final JTextArea notes = OwnWords.box("trainer.notes", 4);
    private final JLabel notesName = new Caption();
    private final Tabs pages = new Tabs();

    /** The desk of a trainer over the trainee's. */
    public TrainerPanel(PracticeDesk desk, List<Scenario> scenarios, Deeds deeds, Saving saving, Dress dress) {
        super(new MigLayout("insets 12, fill, wrap 1, gapy 8", "[grow,fill]", "[grow,fill][][]"));
        this.desk = desk;
        lesson = new ChoosePage(
                "lesson",
                desk,
                () -> deeds.scenario(each -> offer(List.of(each))),
                () -> {
                    deeds.begun();
                    pages.turn(WORK);
                },
                true,
                dress);
        lesson.offer(scenarios);
        TruthCard truth = new TruthCard(dress);
        IncidentCard hand = new IncidentCard(desk, dress);
        StepsCard steps = new StepsCard(desk, dress);
        GroupPage group = new GroupPage(desk, deeds::session, saving, notes, dress);
        JPanel work = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][][grow,fill]"));
        work.setOpaque(false);
        work.add(truth, "growx, hmin pref");
        work.add(hand, "growx");
        work.add(steps, "grow, push");
        pages.add("trainer.page.lesson", lesson, Piece.still(lesson::dress), dress);
        pages.add(WORK, work, piece(truth, hand, steps), dress);
        pages.add("trainer.page.group", group, piece(group), dress);
        notesName.setLabelFor(notes);
        add(pages, "grow, push, wmin 0, hmin 0");
        add(notesName);
        add(new JScrollPane(notes), "growx, h 60:70:");
        desk.onChange(this::refresh);
        dress(dress);
    }

    private Piece piece(PracticePage... parts) {
        return new Piece(
                () -> desk.moment().ifPresent(moment -> List.of(parts).forEach(part -> part.show(moment))),
                other -> List.of(parts).forEach(part -> part.dress(other)));
    }

    private void offer(List<Scenario> more) {
        lesson.offer(more);
    }

    /** Shows what is so now. */
    public void refresh() {
        pages.offer(WORK, desk.moment().isPresent());
        pages.refresh();
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        setBackground(dress.palette().ground());
        pages.dress(dress);
        notesName.setText(dress.text("group.notes"));
        notes.getAccessibleContext().setAccessibleName(dress.text("group.notes"));
        notes.setToolTipText(dress.text("group.notesAbout"));
        refresh();
    }
}
