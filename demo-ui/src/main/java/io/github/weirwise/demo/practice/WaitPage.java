package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import javax.swing.JButton;

/** Lets the tank's clock run: an hour, or on to whatever comes next. */
final class WaitPage extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final Prose about = new Prose();
    private final JButton hour = new JButton();
    private final JButton runOn = new JButton();
    private transient Dress dress;

    WaitPage(PracticeDesk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[]push");
        this.dress = dress;
        hour.setName("session.hour");
        runOn.setName("session.runOn");
        hour.addActionListener(e -> desk.perform(new SessionStep.Wait(60)));
        runOn.addActionListener(e -> desk.perform(new SessionStep.RunOn()));
        beside(runOn);
        beside(hour);
        body().add(about, "growx");
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        boolean runs = ClockCard.runs(session);
        hour.setEnabled(runs);
        runOn.setEnabled(runs);
        about.setText(session.settlesAt()
                .map(at -> dress.text("wait.settling", new TankClock(session).when(at)))
                .orElseGet(() -> dress.text("wait.nothing")));
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        head(other.text("wait.title"));
        paper(other.palette());
        Buttons.name(hour, other, "session.hour");
        Buttons.name(runOn, other, "session.runOn");
    }
}
