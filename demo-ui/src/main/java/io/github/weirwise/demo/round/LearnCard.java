package io.github.weirwise.demo.round;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Learning;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;

/**
 * Learning a unit on purpose: a plan of a few settings, what it costs and what it will tell, worked out before anything is touched;
 * its steps then come in the round of each visit, and what was learned stands beside what was promised.
 */
public final class LearnCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final Integer[] DAYS = {5, 7, 10, 14};

    private final transient Desk desk;
    private final transient Background background;
    private final transient Runnable begun;
    private final Prose about = new Prose();
    private final Prose said = new Prose();
    private final Prose steps = new Prose();
    private final Prose bound = new Prose();
    private final Prose ranges = new Prose();
    private final JLabel daysName = new Caption();
    private final JComboBox<Named<Integer>> days = new JComboBox<>();
    private final JButton plan = new JButton();
    private final JButton begin = new JButton();
    private final JButton stop = new JButton();
    private transient Optional<Learning> offered = Optional.empty();
    private transient Optional<Advice> newest = Optional.empty();
    private boolean working;
    private boolean none;
    private transient Dress dress;

    /** @param begun done when a plan was begun: its first step is there to be done */
    public LearnCard(Desk desk, Background background, Runnable begun, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.desk = desk;
        this.background = background;
        this.begun = begun;
        this.dress = dress;
        ranges.setName("learn.ranges");
        days.setName("learn.days");
        daysName.setLabelFor(days);
        said.setName("learn.said");
        steps.setName("learn.steps");
        Buttons.set(plan, "learn.plan", this::plan);
        Buttons.set(
                begin,
                "learn.begin",
                () -> offered.ifPresent(each -> {
                    offered = Optional.empty();
                    desk.note(List.of(each.begin(desk.now())), begun);
                }));
        Buttons.set(stop, "learn.stop", () -> desk.note(Learning.end(desk.now())));
        JPanel row = Buttons.row(daysName, days, plan, begin, stop);
        for (Prose text : new Prose[] {about, said, steps, bound}) {
            body().add(text, "growx, wmin 0, wrap");
        }
        body().add(ranges, "growx, wmin 0, wrap");
        body().add(row, "growx");
        desk.onChange(() -> newest = desk.advice().or(() -> newest));
        dress(dress);
        days.setSelectedIndex(1);
    }

    private void plan() {
        var journal = desk.journal();
        var now = desk.now();
        LearningPlan.Wish wish = new LearningPlan.Wish(
                Named.picked(days).orElse(DAYS[1]), LearningPlan.Wish.USUAL.mostFloodChance(), false);
        working = true;
        refresh();
        background.run(() -> LearningPlan.of(desk.unit(), desk.told(), journal, now, wish), found -> {
            working = false;
            none = found.isEmpty();
            offered = found.filter(each -> journal.equals(desk.journal())).map(Learning::of);
            refresh();
            (offered.isPresent() ? begin : plan).requestFocusInWindow();
        });
    }

    /** Shows what is offered, what runs, or what was learned. */
    public void refresh() {
        Optional<Learning> noted = Learning.in(desk.journal());
        boolean runs = noted.filter(Learning::runs).isPresent();
        Optional<Learning> shown = offered.filter(each -> !runs).or(() -> noted);
        newest = desk.advice().or(() -> newest);
        said.setText(dress.text("learn." + state(runs, noted.isPresent())));
        steps.setText(shown.map(each -> steps(each, runs)).orElse(""));
        steps.setVisible(shown.isPresent());
        bound.setText(shown.map(this::bound).orElse(""));
        bound.setVisible(shown.isPresent());
        ranges.setText(shown.map(each -> ranges(each, noted)).orElse(""));
        ranges.setVisible(shown.isPresent());
        for (var part : new JComponent[] {plan, days, daysName}) {
            part.setVisible(!runs);
            part.setEnabled(!working);
        }
        begin.setVisible(offered.isPresent() && !runs);
        stop.setVisible(runs);
        for (JComponent part : new JComponent[] {this, plan, begin, stop}) {
            part.getAccessibleContext()
                    .setAccessibleDescription(
                            (said.getText() + "\n" + steps.getText() + "\n" + bound.getText()).strip());
        }
        revalidate();
        repaint();
    }

    private String state(boolean runs, boolean noted) {
        if (runs) {
            return "runs";
        }
        if (working) {
            return "working";
        }
        if (offered.isPresent()) {
            return "offered";
        }
        return none ? "none" : noted ? "over" : "may";
    }

    private String steps(Learning plan, boolean runs) {
        List<String> lines = new ArrayList<>();
        int due = runs ? plan.plan().stageAt(desk.now()) : -1;
        for (int i = 0; i < plan.stages().size(); i++) {
            LearningPlan.Stage stage = plan.stages().get(i);
            String line = dress.text(
                    "learn.stage",
                    i + 1,
                    desk.clock().when(stage.from()),
                    desk.clock().when(stage.until()),
                    Quantity.of(stage.weirCrestMm(), Unit.MILLIMETRE),
                    QuantityRange.of(stage.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY));
            lines.add(i == due ? dress.text("learn.now", line) : line);
        }
        lines.add(dress.text(
                "learn.stage.back",
                desk.clock().when(plan.plan().end()),
                Quantity.of(plan.plan().homeCrestMm(), Unit.MILLIMETRE)));
        return String.join("\n", lines);
    }

    private String bound(Learning plan) {
        double flood = plan.stages().stream()
                .mapToDouble(LearningPlan.Stage::floodChance)
                .max()
                .orElse(0);
        return dress.text("learn.bound", Quantity.of(flood, Unit.CHANCE));
    }

    private String ranges(Learning plan, Optional<Learning> noted) {
        String words = range("learn.before", plan.plan().slopeNow()) + "\n"
                + range("learn.after", plan.plan().slopeAfter());
        return newest.filter(advice -> noted.filter(plan::equals).isPresent())
                .map(advice -> words + "\n"
                        + range("learn.known", advice.diagnosis().ledgers().slopePerMm()))
                .orElse(words);
    }

    private String range(String key, Range logs) {
        return dress.text("learn.range", dress.text(key, step()), QuantityRange.of(factor(logs), Unit.PLAIN));
    }

    /** A step that is large enough for two ranges to be told apart: 5 mm, or 0.2 in. */
    private double stepMm() {
        return dress.words().book().units() == UnitSystem.US_CUSTOMARY ? 5.08 : 5;
    }

    private Quantity step() {
        return Quantity.of(stepMm(), Unit.MILLIMETRE);
    }

    private Range factor(Range logs) {
        return new Range(Math.exp(stepMm() * logs.low()), Math.exp(stepMm() * logs.high()));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("learn.title"));
        paper(other.palette());
        about.setText(other.text("learn.about"));
        for (Prose text : new Prose[] {about, said, steps, bound}) {
            text.setForeground(other.palette().ink());
        }
        daysName.setText(other.text("learn.days"));
        Named.fill(days, DAYS, null, each -> other.words().say(each, Unit.DAY));
        Buttons.name(other, plan, begin, stop);
        ranges.setFont(Standing.COMPUTED.font(UIManager.getFont("Label.font")));
        ranges.setForeground(Standing.COMPUTED.colour(other.palette()));
        refresh();
    }
}
