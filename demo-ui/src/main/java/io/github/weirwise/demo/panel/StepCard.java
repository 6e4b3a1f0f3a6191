package io.github.weirwise.demo.panel;

import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import java.time.Duration;
import javax.swing.JButton;

/** The next step of a desk: asked for, done, and run on from. */
public final class StepCard extends Card {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final AdviceSheet sheet;
    private final JButton ask = new JButton();
    private final JButton take = new JButton();
    private final JButton runOn = new JButton();
    private transient Dress dress;

    /** The advice of a desk; asking is left to the given action. */
    public StepCard(Desk desk, Runnable asking, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        this.desk = desk;
        this.dress = dress;
        sheet = new AdviceSheet(dress);
        body().add(sheet, "grow, push");
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

    /** Shows the advice there is. */
    public void refresh() {
        boolean canTake = desk.advice()
                .map(advice -> !(advice.step() instanceof Step.Hold))
                .orElse(false);
        take.setEnabled(canTake && !desk.stepTaken());
        runOn.setVisible(desk instanceof TankTime);
        runOn.setEnabled(desk.advice()
                .map(advice -> advice.judgeAt().isAfter(desk.now()))
                .orElse(false));
        desk.advice()
                .ifPresentOrElse(advice -> sheet.tell(advice, desk.clock()), () -> sheet.say(dress.text("step.none")));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("step.title"));
        paper(other.palette());
        sheet.dress(other);
        Buttons.name(ask, other, "step.ask");
        Buttons.name(take, other, "step.take");
        Buttons.name(runOn, other, "step.runOn");
        refresh();
    }
}
