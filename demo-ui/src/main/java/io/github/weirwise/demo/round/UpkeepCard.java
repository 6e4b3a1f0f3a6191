package io.github.weirwise.demo.round;

import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.care.TaskDone;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Warning;
import io.github.weirwise.sheet.CareCalendarFile;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JToggleButton;

/** Upkeep stands in the round: what was done is noted with one press, and the adviser hears of it. What is not due is folded away. */
final class UpkeepCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final int CALENDAR_DAYS = 365;

    private final transient Desk desk;
    private final JToggleButton all = new JToggleButton();
    private final JButton calendar = new JButton();
    private transient Runnable noted = () -> {};
    private transient CarePlan plan = CarePlan.of(Journal.EMPTY, Instant.EPOCH);
    private transient Dress dress;

    UpkeepCard(Desk desk, Saving saving, Dress dress) {
        super(dress.palette(), "[grow,fill][]", "");
        this.desk = desk;
        Buttons.set(all, "upkeep.all", this::fill);
        Buttons.set(calendar, "upkeep.calendar", () -> saving.save("care.ics", this::calendar));
        beside(all);
        beside(calendar);
        name(dress);
    }

    private String calendar() {
        Set<CareTask> tasks = EnumSet.complementOf(EnumSet.of(CareTask.LOOK));
        CareCalendar days = CareCalendar.of(plan, ZoneId.systemDefault(), CALENDAR_DAYS, tasks);
        return new CareCalendarFile(dress.words().book(), desk.unit().name(), desk.now()).of(days);
    }

    /** Does this when something was done. */
    void onDone(Runnable listener) {
        noted = listener;
    }

    /** What is due by the journal; a journal without an entry knows nothing yet. */
    void refresh() {
        CarePlan now = CarePlan.of(desk.journal(), desk.now());
        setVisible(!desk.journal().entries().isEmpty());
        if (!now.equals(plan)) {
            plan = now;
            fill();
        }
    }

    private void fill() {
        body().removeAll();
        List<CareItem> due = tasks(plan.toDo());
        head(dress.text("upkeep.title", Count.of(due.size(), "report.count.tasks")));
        List<CareItem> shown = all.isSelected() ? tasks(plan.items()) : due;
        shown.forEach(item -> row(item, !due.contains(item)));
        Prose cautions = new Prose();
        cautions.setForeground(dress.palette().ink());
        cautions.setText(shown.stream()
                .flatMap(item -> item.task().cautions().stream())
                .distinct()
                .map((Warning caution) -> "\u2022 " + dress.words().book().say(caution))
                .collect(Collectors.joining("\n")));
        body().add(cautions, "span 2, growx, wmin 0");
        revalidate();
    }

    private static List<CareItem> tasks(List<CareItem> items) {
        return items.stream().filter(item -> item.task() != CareTask.LOOK).toList();
    }

    private void row(CareItem item, boolean later) {
        Phrase task = item.task().what();
        Prose what = new Prose();
        what.setText(
                later
                        ? dress.text("upkeep.later", task, desk.clock().when(item.due()))
                        : dress.words().say(task));
        what.setForeground(later ? dress.palette().muted() : dress.palette().ink());
        JButton done = new JButton();
        Buttons.set(done, "upkeep." + item.task(), () -> done(item.task()));
        Buttons.name(done, dress, "upkeep.done");
        done.getAccessibleContext().setAccessibleName(dress.text("ask.named", done.getText(), task));
        body().add(what, "growx, wmin 0");
        body().add(done, "wrap");
    }

    /** Notes the service of its part, or a note where the journal knows no part. */
    private void done(CareTask task) {
        JournalEntry entry = task.part()
                .<JournalEntry>map(part -> new Service(desk.now(), part))
                .orElseGet(() -> new TaskDone(desk.now(), task).asNote());
        desk.note(entry);
        noted.run();
    }

    private void name(Dress other) {
        dress = other;
        paper(other.palette());
        Buttons.name(other, all, calendar);
    }

    /** Other words or colours. */
    void dress(Dress other) {
        name(other);
        fill();
    }
}
