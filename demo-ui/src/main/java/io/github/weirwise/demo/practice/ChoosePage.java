package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.practice.Guidance;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JTextField;

/** What to practise, by level and by what it teaches; what it teaches is shown on request, because it may give it away. */
final class ChoosePage extends ListPage {
    private static final long serialVersionUID = 1L;

    private final JTextField trainee = new JTextField(9);
    private final JComboBox<Named<Guidance>> guidance = new JComboBox<>();
    private final JButton begin = new JButton();
    private final JButton open = new JButton();
    private final JCheckBox teaches = new JCheckBox();
    private final transient List<Scenario> scenarios = new ArrayList<>();
    private int seed = 1;

    ChoosePage(PracticeDesk desk, Runnable openFile, Dress dress) {
        super("choose", dress);
        trainee.setName("choose.trainee");
        guidance.setName("choose.guidance");
        begin.setName("choose.begin");
        open.setName("choose.open");
        teaches.setName("choose.teaches");
        teaches.setOpaque(false);
        begin.addActionListener(e -> picked().ifPresent(index -> desk.begin(scenarios.get(index), options())));
        open.addActionListener(e -> openFile.run());
        teaches.addActionListener(e -> refresh());
        put(begin);
        put(open);
        putLast(teaches);
        put(trainee);
        put(guidance);
        dress(dress);
    }

    private SessionOptions options() {
        String name = trainee.getText().strip();
        SessionOptions plain =
                SessionOptions.DEFAULT.withSeed(seed++).withTrainee(name.substring(0, Math.min(100, name.length())));
        return Named.picked(guidance).map(plain::withGuidance).orElse(plain);
    }

    /** Offers these too, easiest first. */
    void offer(List<Scenario> more) {
        for (Scenario each : more) {
            scenarios.removeIf(old -> old.name().equals(each.name()));
            scenarios.add(each);
        }
        scenarios.sort(Comparator.comparing(Scenario::level));
        refresh();
    }

    Optional<Scenario> scenario() {
        return picked().map(scenarios::get);
    }

    private void refresh() {
        List<Row> rows = new ArrayList<>();
        for (Scenario each : scenarios) {
            List<String> about = new ArrayList<>();
            if (teaches.isSelected()) {
                about.add(dress().text("choose.teaches.line", each.teaches()));
            }
            about.add(dress().text("choose.unit", each.unit().name()));
            about.add(dress().text("choose.lasts", Quantity.of(each.goals().lastsHours() / 24, Unit.DAY)));
            about.add(dress().words().say(each.coaching().guidance().words()));
            Row.Mark mark = switch (each.level()) {
                case FIRST -> Row.Mark.GOOD;
                case SECOND -> Row.Mark.MIND;
                case THIRD -> Row.Mark.BAD;
            };
            rows.add(new Row(dress().words().say(each.level().words()), mark, each.title(), String.join("\n", about)));
        }
        show(dress().text("choose.about"), rows);
    }

    void dress(Dress other) {
        dress(other.text("choose.title"), other);
        Buttons.name(begin, other, "choose.begin");
        Buttons.name(open, other, "choose.open");
        Buttons.name(teaches, other, "choose.teaches");
        trainee.getAccessibleContext().setAccessibleName(other.text("choose.trainee"));
        trainee.putClientProperty("JTextField.placeholderText", other.text("choose.trainee"));
        Named.fill(
                guidance,
                Guidance.values(),
                other.text("choose.ownGuidance"),
                each -> other.words().say(each.words()));
        guidance.getAccessibleContext().setAccessibleName(other.text("choose.guidance"));
        refresh();
    }
}
