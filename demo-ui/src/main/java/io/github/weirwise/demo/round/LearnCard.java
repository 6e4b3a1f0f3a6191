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
import net.miginfocom.swing.MigLayout;

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
    private final RangesView ranges;
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
        ranges = new RangesView("learn.ranges", dress);
        days.setName("learn.days");
        daysName.setLabelFor(days);
        said.setName("learn.said");
        steps.setName("learn.steps");
        plan.setName("learn.plan");
        begin.setName("learn.begin");
        stop.setName("learn.stop");
        plan.addActionListener(e -> plan());
        begin.addActionListener(e -> offered.ifPresent(each -> {
            offered = Optional.empty();
            desk.note(List.of(each.begin(desk.now())), begun);
        }));
        stop.addActionListener(e -> desk.note(Learning.end(desk.now())));
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 6, hidemode 3"));
        row.setOpaque(false);
        row.add(daysName);
        row.add(days);
        row.add(plan);
        row.add(begin);
        row.add(stop);
        for (Prose text : new Prose[] {about, said, steps, bound}) {
            body().add(text, "growx, wmin 0, wrap");
        }
        body().add(ranges, "growx, wrap");
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
        double home = desk.settings().weirCrestMm();
        working = true;
        refresh();
        background.run(() -> LearningPlan.of(desk.unit(), desk.told(), journal, now, wish), found -> {
            working = false;
            none = found.isEmpty();
            offered = found.filter(each -> journal.equals(desk.journal())).map(each -> Learning.of(each, home));
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
        ranges.show(shown.map(each -> ranges(each, noted)).orElse(List.of()));
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
        int due = runs ? plan.stageAt(desk.now()) : -1;
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
                "learn.stage.back", desk.clock().when(plan.plan().end()), Quantity.of(plan.homeMm(), Unit.MILLIMETRE)));
        return String.join("\n", lines);
    }

    private String bound(Learning plan) {
        double flood = plan.stages().stream()
                .mapToDouble(LearningPlan.Stage::floodChance)
                .max()
                .orElse(0);
        return dress.text("learn.bound", Quantity.of(flood, Unit.CHANCE));
    }

    private List<RangesView.Row> ranges(Learning plan, Optional<Learning> noted) {
        List<RangesView.Row> rows = new ArrayList<>();
        rows.add(new RangesView.Row(
                dress.text("learn.before", step()), factor(plan.plan().slopeNow())));
        rows.add(new RangesView.Row(
                dress.text("learn.after", step()), factor(plan.plan().slopeAfter())));
        newest.filter(advice -> noted.filter(plan::equals).isPresent())
                .ifPresent(advice -> rows.add(new RangesView.Row(
                        dress.text("learn.known", step()),
                        factor(advice.diagnosis().ledgers().slopePerMm()))));
        return rows;
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
        Buttons.name(plan, other, "learn.plan");
        Buttons.name(begin, other, "learn.begin");
        Buttons.name(stop, other, "learn.stop");
        ranges.dress(other);
        refresh();
    }
}
