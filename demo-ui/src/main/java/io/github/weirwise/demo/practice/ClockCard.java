package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Passage;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.Guidance;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionClock;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.awt.event.KeyEvent;
import java.time.Instant;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.KeyStroke;

/** The session's clock: what time it is, whether the last change is still at work, and what help there is. */
final class ClockCard extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final JLabel now = new Caption();
    private final Prose state = new Prose();
    private final JProgressBar moving = new JProgressBar(0, 100);
    private final JButton hint;
    private final JButton skip;
    private transient Runnable skipped = () -> {};

    ClockCard(PracticeDesk desk, Dress dress) {
        super("session.title", "[grow,fill]", "[][][]", dress);
        skip = button("clock.skip", () -> skipped.run());
        skip.setVisible(false);
        hint = button("session.hint", () -> desk.perform(new SessionStep.AskHint()));
        beside(skip);
        beside(hint);
        beside(button("session.leave", desk::leave));
        Buttons.onKey(this, WHEN_IN_FOCUSED_WINDOW, KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), () -> skipped.run());
        onDress(other -> moving.getAccessibleContext().setAccessibleName(other.text("session.bar")));
        body().add(now, "wrap");
        body().add(state, "growx, wrap");
        body().add(moving, "growx");
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        TankClock clock = new TankClock(session);
        skip.setVisible(false);
        double left = session.scenario().endsAtHour() - session.hours();
        now.setText(
                dress.text("session.now", clock.when(session.hours()), Quantity.of(Math.max(0, left) / 24, Unit.DAY)));
        int hints = session.guidance() == Guidance.NONE
                ? 0
                : session.scenario().coaching().hints().size() - session.hints().size();
        hint.setEnabled(hints > 0);
        hint.setText(dress.text("session.hintsLeft", hints));
        state.setText(state(session, clock));
        int percent = session.settlesAt().map(at -> done(session, at)).orElse(100);
        moving.setValue(percent);
        moving.getAccessibleContext().setAccessibleDescription(state.getText());
    }

    /** Shows where a wait that goes by before the eyes has come to, and lets it be skipped. */
    void pass(WaitFilm film, Passage passage) {
        now.setText(dress.text("session.passing", new TankClock(film.session()).when(film.now())));
        skip.setVisible(passage.runs());
        skipped = passage::skip;
    }

    /** Whether the clock may run. */
    static boolean runs(PracticeSession session) {
        return !session.over() && !session.held() && session.questions().isEmpty();
    }

    private String state(PracticeSession session, TankClock clock) {
        if (session.over()) {
            return dress.text("session.over");
        }
        if (session.held()) {
            return dress.text("session.held");
        }
        if (!session.questions().isEmpty()) {
            return dress.text("session.asked");
        }
        return session.settlesAt()
                .map(at -> dress.text("session.moving", clock.when(at)))
                .orElseGet(() -> dress.text("session.settled"));
    }

    /** How much of the wait is over, in percent. */
    private static int done(PracticeSession session, Instant settles) {
        Optional<Double> began = session.log().stream()
                .filter(line -> line.step() instanceof SessionStep.Do)
                .map(line -> line.fromHours())
                .reduce((first, last) -> last);
        double from = began.orElse(session.hours());
        double to = SessionClock.hours(settles);
        return (int) Math.round(100 * (session.hours() - from) / Math.max(0.1, to - from));
    }
}
