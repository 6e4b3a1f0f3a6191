package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Group;
import io.github.weirwise.demo.panel.Place;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionRecord;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
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
    private final transient List<PracticePage> parts;
    private final Map<String, JToggleButton> buttons = new LinkedHashMap<>();
    private final Map<String, JComponent> pages = new LinkedHashMap<>();
    private final JTextArea notes = new JTextArea(4, 20);
    private final JLabel notesName = new Caption();
    private final Place stack = new Place();

    /** The desk of a trainer over the trainee's. */
    public TrainerPanel(PracticeDesk desk, List<Scenario> scenarios, Deeds deeds, Saving saving, Dress dress) {
        super(new MigLayout("insets 12, fill, wrap 1, gapy 8", "[grow,fill]", "[][grow,fill][][]"));
        this.desk = desk;
        lesson = new ChoosePage(
                "lesson",
                desk,
                () -> deeds.scenario(each -> offer(List.of(each))),
                () -> {
                    deeds.begun();
                    turn(WORK);
                },
                true,
                dress);
        lesson.offer(scenarios);
        notes.setName("trainer.notes");
        notes.setLineWrap(true);
        notes.setWrapStyleWord(true);
        notes.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        notes.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        TruthCard truth = new TruthCard(dress);
        IncidentCard hand = new IncidentCard(desk, dress);
        StepsCard steps = new StepsCard(desk, dress);
        GroupPage group = new GroupPage(desk, deeds::session, saving, notes, dress);
        parts = List.of(truth, hand, steps, group);
        JPanel work = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 8", "[grow,fill]", "[][][grow,fill]"));
        work.setOpaque(false);
        work.add(truth, "growx, hmin pref");
        work.add(hand, "growx");
        work.add(steps, "grow, push");
        JPanel choice = new JPanel(new MigLayout("insets 0, gapx 6"));
        choice.setOpaque(false);
        Group together = new Group();
        pages.put("trainer.page.lesson", lesson);
        pages.put(WORK, work);
        pages.put("trainer.page.group", group);
        pages.forEach((key, page) -> {
            JToggleButton button = new JToggleButton();
            button.setName(key);
            button.addActionListener(e -> turn(key));
            together.add(button);
            buttons.put(key, button);
            choice.add(button);
            stack.keep(page);
        });
        notesName.setLabelFor(notes);
        add(choice);
        add(stack.outside(), "grow, push, wmin 0, hmin 0");
        add(notesName);
        add(new JScrollPane(notes), "growx, h 60:70:");
        turn("trainer.page.lesson");
        desk.onChange(this::refresh);
        dress(dress);
    }

    private void turn(String key) {
        buttons.get(key).setSelected(true);
        stack.hold(pages.get(key));
    }

    private void offer(List<Scenario> more) {
        lesson.offer(more);
    }

    /** Shows what is so now. */
    public void refresh() {
        desk.moment().ifPresent(moment -> parts.forEach(part -> part.show(moment)));
        buttons.get(WORK).setEnabled(desk.moment().isPresent());
    }

    /** Other words or colours. */
    public void dress(Dress dress) {
        setBackground(dress.palette().ground());
        buttons.forEach((key, button) -> Buttons.name(button, dress, key));
        notesName.setText(dress.text("group.notes"));
        notes.getAccessibleContext().setAccessibleName(dress.text("group.notes"));
        notes.setToolTipText(dress.text("group.notesAbout"));
        lesson.dress(dress);
        parts.forEach(part -> part.dress(dress));
        refresh();
    }
}
