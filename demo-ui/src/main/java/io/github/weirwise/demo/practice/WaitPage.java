package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import javax.swing.JButton;

/** Lets the tank's clock run: an hour, or on to whatever comes next. */
final class WaitPage extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final Prose about = new Prose();
    private final JButton hour;
    private final JButton runOn;

    WaitPage(PracticeDesk desk, Dress dress) {
        super("wait.title", "[grow,fill]", "[]push", dress);
        runOn = button("session.runOn", () -> desk.perform(new SessionStep.RunOn()));
        hour = button("session.hour", () -> desk.perform(new SessionStep.Wait(60)));
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
}
