package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Lesson;
import io.github.weirwise.demo.desk.LessonRun;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Says what the last turn of a knob does, and why; on request what a technician would do now; and leads through small lessons. */
public final class TryCard extends Card {
    private static final long serialVersionUID = 1L;

    private final transient TryDesk desk;
    private final transient LessonRun run;
    private final Prose change = new Prose();
    private final Prose told = new Prose();
    private final Prose said = new Prose();
    private final JButton technician = new JButton();
    private final JButton empty = new JButton();
    private final Caption label = new Caption();
    private final Map<Lesson, JToggleButton> lessons = new EnumMap<>(Lesson.class);
    private transient Dress dress;

    /** The change told for a desk of free play, and the lessons given at it. */
    public TryCard(TryDesk desk, LessonRun run, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[][][][grow,fill]");
        this.desk = desk;
        this.dress = dress;
        this.run = run;
        change.setName("whatChanged");
        told.setName("try.told");
        said.setName("said");
        technician.setName("technician");
        technician.addActionListener(e -> tell(said, dress().words().say(desk.technician())));
        empty.setName("try.empty");
        empty.addActionListener(e -> desk.emptyCup());
        beside(empty);
        beside(technician);
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 6"));
        row.setOpaque(false);
        row.add(label);
        for (Lesson lesson : Lesson.values()) {
            JToggleButton button = new JToggleButton();
            button.setName("lesson." + lesson);
            button.addActionListener(e -> run(lesson, button.isSelected()));
            lessons.put(lesson, button);
            row.add(button);
        }
        body().add(row, "growx, wmin 0, wrap");
        body().add(told, "growx, wmin 0, wrap");
        body().add(said, "growx, wmin 0, wrap");
        body().add(change, "growx, wmin 0, hmin 56");
        dress(dress);
    }

    private Dress dress() {
        return dress;
    }

    private void run(Lesson lesson, boolean on) {
        run.begin(on ? Optional.of(lesson) : Optional.empty());
        refresh();
    }

    private void tell(Prose where, String text) {
        boolean news = !text.equals(where.getText());
        where.setText(text);
        where.setVisible(!text.isEmpty());
        if (news) {
            revalidate();
        }
    }

    /** Shows the newest change and where the lesson stands; what the technician said no longer holds. */
    public void refresh() {
        lessons.forEach((lesson, button) ->
                button.setSelected(run.lesson().filter(lesson::equals).isPresent()));
        empty.setEnabled(desk.scene().collected().ml() > 0);
        change.setText(desk.whatChanged().map(dress.words()::say).orElseGet(() -> dress.text("change.none")));
        tell(told, run.told().map(dress.words()::say).orElse(""));
        tell(said, "");
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("change.title"));
        paper(other.palette());
        label.setText(other.text("lesson.label"));
        Buttons.name(technician, other, "technician.ask");
        Buttons.name(empty, other, "try.empty");
        lessons.forEach((lesson, button) -> Buttons.name(button, other, "lesson." + lesson));
        refresh();
    }
}
