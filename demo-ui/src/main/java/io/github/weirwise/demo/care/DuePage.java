package io.github.weirwise.demo.care;

import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareItem;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.round.UpkeepCard;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.sheet.CareCalendarFile;
import io.github.weirwise.sheet.HandOver;
import io.github.weirwise.sheet.HandOverSheet;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JButton;

/** What is due on the unit that is tuned, by its journal; what was done is noted there. */
final class DuePage extends ListPage {
    private static final long serialVersionUID = 1L;
    private static final int CALENDAR_DAYS = 365;

    private final transient Supplier<Desk> desk;
    private final transient Supplier<FitCheck> check;
    private final JButton doneNow = new JButton();
    private final JButton save = new JButton();
    private final JButton handOver = new JButton();
    private transient CarePlan plan;

    DuePage(Supplier<Desk> desk, Supplier<FitCheck> check, Saving saving, Dress dress) {
        super("due", dress);
        this.desk = desk;
        this.check = check;
        doneNow.setName("due.done");
        doneNow.addActionListener(e -> picked().ifPresent(index ->
                UpkeepCard.done(desk.get(), plan.items().get(index).task())));
        save.setName("due.save");
        save.addActionListener(e -> saving.save("care.ics", this::calendar));
        handOver.setName("due.handOver");
        handOver.addActionListener(e -> saving.save("hand-over.html", this::sheet));
        put(doneNow);
        put(handOver);
        put(save);
        dress(dress);
    }

    /** The fit check goes along when it was made for this very unit. */
    private String sheet() {
        Desk at = desk.get();
        Optional<FitCheck> fit = Optional.of(check.get())
                .filter(done -> done.installation().filter().unit().equals(at.unit()));
        HandOver over = HandOver.of(at.unit(), at.settings(), at.journal(), fit, at.now());
        return new HandOverSheet(dress().words().book(), ZoneId.systemDefault()).of(over);
    }

    private String calendar() {
        Set<CareTask> tasks = EnumSet.allOf(CareTask.class);
        tasks.remove(CareTask.LOOK);
        Desk at = desk.get();
        CareCalendar calendar = CareCalendar.of(plan, ZoneId.systemDefault(), CALENDAR_DAYS, tasks);
        return new CareCalendarFile(dress().words().book(), at.unit().name(), at.now()).of(calendar);
    }

    void refresh() {
        Desk at = desk.get();
        plan = CarePlan.of(at.journal(), at.now());
        Clock clock = at.clock();
        show(
                dress().text("due.summary", at.title(), Count.of(plan.toDo().size(), "report.count.tasks")),
                plan.items().stream().map(item -> row(item, clock)).toList());
    }

    private Row row(CareItem item, Clock clock) {
        Words words = dress().words();
        List<String> parts = new ArrayList<>();
        parts.add(words.say(item.task().why()));
        parts.add(words.of("due.when", clock.when(item.due())));
        parts.add(
                item.lastDone().map(at -> words.of("due.last", clock.when(at))).orElseGet(() -> words.of("due.never")));
        parts.add(words.say(item.interval().reason()));
        parts.add(words.say(item.task().effect()));
        parts.add(words.say(item.task().foamAway()));
        for (Warning caution : item.task().cautions()) {
            parts.add("\u2022 " + words.book().say(caution));
        }
        Row.Mark mark = switch (item.state()) {
            case FRESH -> Row.Mark.GOOD;
            case SOON, DUE -> Row.Mark.MIND;
            case OVERDUE -> Row.Mark.BAD;
        };
        return new Row(
                words.say(item.state().words()), mark, words.say(item.task().what()), String.join("\n", parts));
    }

    void dress(Dress other) {
        dress(other.text("due.title"), other);
        Buttons.name(doneNow, other, "due.done");
        Buttons.name(save, other, "due.save");
        Buttons.name(handOver, other, "due.handOver");
        refresh();
    }
}
