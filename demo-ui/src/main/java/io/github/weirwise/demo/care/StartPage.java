package io.github.weirwise.demo.care;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.ListPage;
import io.github.weirwise.demo.panel.Row;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.report.Band;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.setup.BreakInStage;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.setup.StartUpStep;
import io.github.weirwise.setup.StartUpTask;
import io.github.weirwise.sheet.SetupText;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JButton;

/** The first filling and start, step by step; what was done is ticked off. */
final class StartPage extends ListPage {
    private static final long serialVersionUID = 1L;

    private final transient Supplier<FitCheck> check;
    private final Set<StartUpTask> done = EnumSet.noneOf(StartUpTask.class);
    private final JButton tick = new JButton();
    private final JButton save = new JButton();
    private transient StartUpPlan plan;

    StartPage(Supplier<FitCheck> check, Saving saving, Dress dress) {
        super("start", dress);
        this.check = check;
        Buttons.set(tick, "start.tick", this::tick);
        Buttons.set(
                save,
                "start.save",
                () -> saving.save(
                        "first-start.txt", () -> new SetupText(dress().words().book()).of(plan)));
        put(tick);
        put(save);
        dress(dress);
    }

    private void tick() {
        picked().filter(index -> index < plan.steps().size()).ifPresent(index -> {
            StartUpTask task = plan.steps().get(index).task();
            if (!done.remove(task)) {
                done.add(task);
            }
            refresh();
        });
    }

    void refresh() {
        Words words = dress().words();
        plan = StartUpPlan.of(check.get());
        List<Row> rows = new ArrayList<>();
        plan.steps().forEach(step -> rows.add(row(step)));
        plan.breakIn().forEach(stage -> rows.add(row(stage)));
        String warnings = plan.warnings().stream()
                .map(warning -> words.book().say(warning))
                .collect(Collectors.joining("\n"));
        show(warnings, rows);
    }

    private Row row(StartUpStep step) {
        Words words = dress().words();
        Warning caution = step.caution();
        boolean ticked = done.contains(step.task());
        Row.Mark mark = ticked ? Row.Mark.DONE : Row.Mark.GOOD;
        return new Row(
                words.of(ticked ? "start.done" : "start.step", step.order()),
                mark,
                words.say(step.todo()),
                String.join(
                        "\n",
                        "\u2022 " + words.book().say(caution),
                        words.of("start.see", step.see()),
                        words.of("start.ifNot", step.ifNot())));
    }

    private Row row(BreakInStage stage) {
        Words words = dress().words();
        String days = words.say(stage.days(), Unit.DAY);
        String told = words.say(stage.expect());
        return new Row(
                words.of("start.breakIn"),
                Row.Mark.MIND,
                words.of("start.days", Band.of(stage.days(), Unit.DAY)),
                days + "\n" + told);
    }

    void dress(Dress other) {
        dress(other.text("start.title"), other);
        Buttons.name(other, tick, save);
        refresh();
    }
}
