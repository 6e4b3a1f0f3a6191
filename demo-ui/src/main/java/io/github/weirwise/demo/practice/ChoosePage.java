package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
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
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;

/** What to practise, by level and by what it teaches; what it teaches is shown on request, because it may give it away. */
final class ChoosePage extends ListPage {
    private static final long serialVersionUID = 1L;

    private final String title;
    private final transient PracticeDesk desk;
    private final JTextField trainee = new JTextField(9);
    private final JComboBox<Named<Guidance>> guidance = new JComboBox<>();
    private final JButton begin = new JButton();
    private final JButton open = new JButton();
    private final JCheckBox teaches = new JCheckBox();
    private final transient List<Scenario> scenarios = new ArrayList<>();
    private final JSpinner draw = new JSpinner(new SpinnerNumberModel(1, 1, 9999, 1));
    private final JLabel drawName = new Caption();

    /**
     * A page to choose from.
     *
     * @param name before the names of its parts
     * @param begun what else is done when a session begins
     * @param withDraw whether the draw of the errors of reading can be chosen; all who have the same one read the same
     */
    ChoosePage(String name, PracticeDesk desk, Runnable openFile, Runnable begun, boolean withDraw, Dress dress) {
        super(name, dress);
        title = withDraw ? "lesson.title" : "choose.title";
        this.desk = desk;
        desk.onChange(this::refresh);
        trainee.setName(name + ".trainee");
        guidance.setName(name + ".guidance");
        begin.setName(name + ".begin");
        open.setName(name + ".open");
        teaches.setName(name + ".teaches");
        teaches.setOpaque(false);
        begin.addActionListener(e -> picked().ifPresent(index -> {
            begun.run();
            desk.begin(scenarios.get(index), options());
        }));
        open.addActionListener(e -> openFile.run());
        teaches.addActionListener(e -> refresh());
        put(begin);
        put(open);
        putLast(teaches);
        put(trainee);
        put(guidance);
        if (withDraw) {
            draw.setName(name + ".draw");
            drawName.setLabelFor(draw);
            put(drawName);
            put(draw);
        }
        dress(dress);
    }

    private SessionOptions options() {
        String name = trainee.getText().strip();
        SessionOptions plain = SessionOptions.DEFAULT
                .withSeed((Integer) draw.getValue())
                .withTrainee(name.substring(0, Math.min(100, name.length())));
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
            about.add(dress().words()
                    .say(desk.help(trainee.getText().strip(), each).words()));
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
        dress(other.text(title), other);
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
        drawName.setText(other.text("lesson.draw"));
        draw.getAccessibleContext().setAccessibleName(other.text("lesson.draw"));
        ((JSpinner.DefaultEditor) draw.getEditor())
                .getTextField()
                .getAccessibleContext()
                .setAccessibleName(other.text("lesson.draw"));
        refresh();
    }
}
