package io.github.weirwise.demo.panel;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.time.Duration;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.UIManager;

/**
 * The next step: what to do, always in sight; under it cautions first, when to look again, what to expect, and the
 * reasons to unfold.
 */
public final class StepCard extends Card {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final Sheet content = new Sheet();
    private final JLabel mind = new Caption();
    private final Prose cautions = new Prose();
    private final Prose what = new Prose();
    private final JLabel wait = new Caption();
    private final Prose waiting = new Prose();
    private final JLabel expect = new Caption();
    private final Prose expected = new Prose();
    private final JLabel why = new Caption();
    private final ReasonTree reasons = new ReasonTree();
    private final JLabel ifNot = new Caption();
    private final Prose changes = new Prose();
    private final JButton ask = new JButton();
    private final JButton take = new JButton();
    private final JButton runOn = new JButton();
    private transient Dress dress;

    /** The advice of a desk; asking is left to the given action. */
    public StepCard(Desk desk, Runnable asking, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[][grow,fill]");
        this.desk = desk;
        this.dress = dress;
        body().add(what, "growx, wrap");
        row(mind, cautions);
        row(wait, waiting);
        row(expect, expected);
        row(ifNot, changes);
        content.add(why, "aligny top");
        content.add(reasons, "growx, wrap");
        JScrollPane scroll = new JScrollPane(
                content, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        body().add(scroll, "grow, push, hmin 60");
        beside(ask);
        beside(take);
        beside(runOn);
        ask.setName("ask");
        take.setName("takeStep");
        runOn.setName("runOn");
        ask.addActionListener(e -> asking.run());
        take.addActionListener(e -> desk.takeStep());
        runOn.addActionListener(e -> runOn());
        dress(dress);
    }

    private void runOn() {
        if (desk instanceof TankTime clock && desk.advice().isPresent()) {
            Duration wait = Duration.between(desk.now(), desk.advice().get().judgeAt());
            clock.run(wait.isNegative() ? Duration.ZERO : wait);
        }
    }

    private void row(JLabel label, Prose text) {
        content.add(label, "aligny top");
        content.add(text, "growx, wrap");
    }

    /** Shows the advice there is. */
    public void refresh() {
        boolean there = desk.advice().isPresent();
        for (var part :
                new java.awt.Component[] {mind, cautions, wait, waiting, expect, expected, why, reasons, ifNot, changes
                }) {
            part.setVisible(there);
        }
        boolean canTake = desk.advice()
                .map(advice -> !(advice.step() instanceof Step.Hold))
                .orElse(false);
        take.setEnabled(canTake && !desk.stepTaken());
        runOn.setVisible(desk instanceof TankTime);
        runOn.setEnabled(desk.advice()
                .map(advice -> advice.judgeAt().isAfter(desk.now()))
                .orElse(false));
        if (there) {
            tell(desk.advice().orElseThrow());
        } else {
            what.setText(dress.text("step.none"));
            reasons.clear();
        }
    }

    private void tell(Advice advice) {
        what.setText(dress.words().say(advice.what()));
        cautions.setText(advice.cautions().stream()
                .map(each -> "\u2022 " + dress.words().book().say(each))
                .collect(Collectors.joining("\n")));
        mind.setVisible(!advice.cautions().isEmpty());
        cautions.setVisible(!advice.cautions().isEmpty());
        waiting.setText(dress.words().say(new Clock(desk.start()).waiting(advice)));
        expected.setText(dress.text(
                "expect.line",
                QuantityRange.of(advice.expectation().submergenceMm(), Unit.MILLIMETRE),
                QuantityRange.of(advice.expectation().skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY),
                QuantityRange.of(advice.expectation().darknessPtCo(), Unit.PLATINUM_COBALT),
                Quantity.of(advice.expectation().chanceOnTarget(), Unit.SHARE)));
        changes.setText(advice.wouldChangeIt().stream().map(this::bullet).collect(Collectors.joining("\n")));
        reasons.show(advice.why(), dress);
    }

    private String bullet(Phrase phrase) {
        return "\u2022 " + dress.words().say(phrase);
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("step.title"));
        paper(other.palette());
        Font plain = UIManager.getFont("Label.font");
        what.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * 1.15f));
        mind.setText(other.text("text.caution"));
        wait.setText(other.text("text.wait"));
        expect.setText(other.text("text.expect"));
        why.setText(other.text("text.why"));
        ifNot.setText(other.text("text.ifNot"));
        for (JLabel label : new JLabel[] {mind, wait, expect, why, ifNot}) {
            label.setForeground(other.palette().muted());
        }
        reasons.getAccessibleContext().setAccessibleName(other.text("step.reasons"));
        Buttons.name(ask, other, "step.ask");
        Buttons.name(take, other, "step.take");
        Buttons.name(runOn, other, "step.runOn");
        refresh();
    }
}
