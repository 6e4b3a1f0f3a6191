package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.practice.LogLine;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;

/** Every step of the session, to go back to and on from in another way; what was left stays as a branch. */
final class StepsCard extends ListPage implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final JButton back;
    private final JComboBox<Named<Integer>> branches = new JComboBox<>();
    private final JButton change;
    private transient Optional<Moment> shown = Optional.empty();

    StepsCard(PracticeDesk desk, Dress dress) {
        super("steps", dress);
        this.desk = desk;
        back = button("steps.back", () -> picked().ifPresent(desk::rewindTo));
        change = button("steps.change", () -> Named.picked(branches).ifPresent(desk::changeOver));
        branches.setName("steps.branches");
        put(back);
        put(branches);
        put(change);
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        shown = Optional.of(moment);
        TankClock clock = new TankClock(moment.session());
        StepWords words = new StepWords();
        List<Row> rows = new ArrayList<>();
        for (LogLine line : moment.session().log()) {
            rows.add(new Row(
                    dress().words().say(clock.when(line.fromHours())),
                    line.insideWait() ? Row.Mark.MIND : Row.Mark.GOOD,
                    dress().words().say(words.of(line.step())),
                    String.join("\n", words.about(line, dress()))));
        }
        show(dress().text("steps.about", Count.of(rows.size(), "report.count.steps")), rows);
        seeLast();
        Integer[] numbers = new Integer[desk.branches().size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = i;
        }
        Named.fill(branches, numbers, dress().text("steps.noBranch"), this::branch);
        back.setEnabled(!rows.isEmpty());
        change.setEnabled(numbers.length > 0);
    }

    private String branch(int number) {
        Moment left = desk.branches().get(number);
        double days =
                (left.session().hours() - left.session().scenario().start().arrivesAtHour()) / 24;
        return dress().text(
                        "steps.branch",
                        number + 1,
                        Count.of(left.session().steps().size(), "report.count.steps"),
                        Quantity.of(days, Unit.DAY));
    }

    @Override
    public void dress(Dress other) {
        dress(other.text("steps.title"), other);
        branches.getAccessibleContext().setAccessibleName(other.text("steps.branches"));
        shown.ifPresent(this::show);
    }
}
