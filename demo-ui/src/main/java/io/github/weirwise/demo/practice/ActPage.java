package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Prediction;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.OutOfRangeException;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTextField;

/** One thing to do, and before it what will follow; a second change inside the wait asks for a reason. */
final class ActPage extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final ActForm act;
    private final Prose sayFirst = new Prose();
    private final PredictionForm prediction;
    private final Prose waiting = new Prose();
    private final JLabel reasonName = new Caption();
    private final JTextField reason = new JTextField();
    private final Prose said = new Prose();
    private final JButton doIt;
    private int stepsShown = -1;

    ActPage(PracticeDesk desk, Dress dress) {
        super("act.title", "[][grow,fill]", "[][][][][][]push", dress);
        this.desk = desk;
        act = new ActForm(dress);
        prediction = new PredictionForm(dress);
        prediction.onChange(this::offer);
        doIt = button("act.do", this::act);
        onDress(act::dress);
        onDress(prediction::dress);
        reason.setName("act.reason");
        reasonName.setLabelFor(reason);
        said.setName("act.said");
        beside(doIt);
        body().add(act, "span 2, growx, wrap 12");
        body().add(sayFirst, "span 2, growx, wrap");
        body().add(prediction, "span 2, growx, wrap 12");
        body().add(waiting, "span 2, growx, wrap");
        body().add(reasonName);
        body().add(reason, "growx, wrap");
        body().add(said, "span 2, growx");
        dress(dress);
    }

    private void offer() {
        doIt.setEnabled(prediction.prediction().isPresent());
    }

    private void act() {
        said.setText("");
        try {
            Optional<Act> picked = act.act();
            Optional<Prediction> expected = prediction.prediction();
            if (picked.isEmpty() || expected.isEmpty()) {
                said.setText(dress.text("act.notFilled"));
                return;
            }
            desk.perform(new SessionStep.Do(
                    picked.get(), expected.get(), reason.getText().strip()));
        } catch (OutOfRangeException e) {
            said.setText(dress.text(
                    "act.outOfRange", e.value(), e.limits().low(), e.limits().high()));
        } catch (IllegalArgumentException e) {
            said.setText(dress.text("act.notFilled"));
        }
    }

    /** Fills in a move of the weir, as from the picture. */
    void plan(double byMm) {
        act.plan(byMm);
    }

    @Override
    public void show(Moment moment) {
        act.offer(moment.session().scenario());
        int steps = moment.session().steps().size();
        if (steps != stepsShown) {
            stepsShown = steps;
            boolean acted = moment.session().log().stream()
                    .reduce((first, last) -> last)
                    .filter(line -> line.step() instanceof SessionStep.Do)
                    .isPresent();
            if (acted) {
                prediction.clear();
                reason.setText("");
            }
        }
        boolean wait = moment.session().settlesAt().isPresent();
        waiting.setVisible(wait);
        reasonName.setVisible(wait);
        reason.setVisible(wait);
        moment.session()
                .settlesAt()
                .ifPresent(at -> waiting.setText(dress.text("act.waiting", new TankClock(moment.session()).when(at))));
        offer();
        revalidate();
    }

    @Override
    public void dress(Dress other) {
        super.dress(other);
        sayFirst.setText(other.text("predict.title"));
        reasonName.setText(other.text("act.reason"));
        offer();
    }
}
