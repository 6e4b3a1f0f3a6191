package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.AdviceSheet;
import io.github.weirwise.practice.Guidance;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import javax.swing.JButton;

/** The adviser's view: shut until the trainee has given one. */
final class AdvicePage extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final AdviceSheet sheet;
    private final JButton open;

    AdvicePage(PracticeDesk desk, Dress dress) {
        super("advice.title", "[grow,fill]", "[grow,fill]", dress);
        sheet = new AdviceSheet(dress);
        open = button("advice.open", () -> desk.perform(new SessionStep.OpenAdvice()));
        onDress(sheet::dress);
        beside(open);
        body().add(sheet, "grow, push");
        dress(dress);
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        boolean shutForGood =
                session.guidance() == Guidance.NONE && session.revealed().isEmpty();
        open.setEnabled(
                !shutForGood && !session.adviceOpen() && session.ownView().isPresent());
        moment.advice()
                .ifPresentOrElse(
                        advice -> sheet.tell(advice, TankClock.of(session)),
                        () -> sheet.say(dress.text(
                                shutForGood
                                        ? "advice.shutForGood"
                                        : session.ownView().isPresent() ? "advice.mayOpen" : "advice.shut")));
    }
}
