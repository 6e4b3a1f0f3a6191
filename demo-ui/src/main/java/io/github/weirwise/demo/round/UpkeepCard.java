package io.github.weirwise.demo.round;

import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Warning;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;

/** Upkeep that is due stands in the round: what was done is noted with one press, and the adviser hears of it. */
public final class UpkeepCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 4;

    private final transient Desk desk;
    private transient Runnable noted = () -> {};
    private transient List<CareItem> shown = List.of();
    private transient Dress dress;

    UpkeepCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill][]", "");
        this.desk = desk;
        dress(dress);
    }

    /** Notes a task as done: the service of its part, or a note where the journal knows no part. */
    public static void done(Desk desk, CareTask task) {
        JournalEntry entry = task.part()
                .<JournalEntry>map(part -> new Service(desk.now(), part))
                .orElseGet(() -> new TaskDone(desk.now(), task).asNote());
        desk.note(entry);
    }

    /** Does this when something was done. */
    void onDone(Runnable listener) {
        noted = listener;
    }

    /** What is due by the journal; a journal without an entry knows nothing yet. */
    void refresh() {
        List<CareItem> due = desk.journal().entries().isEmpty()
                ? List.of()
                : CarePlan.of(desk.journal(), desk.now()).toDo().stream()
                        .filter(item -> item.task() != CareTask.LOOK)
                        .toList();
        setVisible(!due.isEmpty());
        List<CareTask> tasks = due.stream().map(CareItem::task).toList();
        if (!tasks.equals(shown.stream().map(CareItem::task).toList())) {
            shown = due;
            fill();
        }
    }

    private void fill() {
        body().removeAll();
        head(dress.text("upkeep.title", io.github.weirwise.report.Count.of(shown.size(), "report.count.tasks")));
        for (CareItem item : shown.stream().limit(MOST).toList()) {
            Prose what = new Prose();
            what.setText(dress.words().say(item.task().what()));
            what.setToolTipText(item.task().cautions().stream()
                    .map((Warning caution) -> dress.words().book().say(caution))
                    .collect(Collectors.joining(" ")));
            JButton done = new JButton();
            done.setName("upkeep." + item.task());
            Buttons.name(done, dress, "upkeep.done");
            done.getAccessibleContext()
                    .setAccessibleName(
                            dress.text("ask.named", done.getText(), item.task().what()));
            done.addActionListener(e -> {
                done(desk, item.task());
                noted.run();
            });
            body().add(what, "growx, wmin 0");
            body().add(done, "wrap");
        }
        if (shown.size() > MOST) {
            Prose rest = new Prose();
            rest.setText(dress.text("upkeep.more", shown.size() - MOST));
            body().add(rest, "span 2, growx, wmin 0");
        }
        revalidate();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        paper(other.palette());
        refresh();
        fill();
    }
}
