package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.tank.TankEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;

/** The trainer's hand on the session: stop the clock, let time pass, let something happen, say something, show the truth. */
final class IncidentCard extends SessionCard {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final JToggleButton hold;
    private final JButton hour;
    private final JButton runOn;
    private final JButton reveal;
    private final JLabel whatName = new Caption();
    private final JComboBox<Named<Incident>> what = new JComboBox<>();
    private final JLabel sayName = new Caption();
    private final JTextField says = new JTextField();

    IncidentCard(PracticeDesk desk, Dress dress) {
        super("trainer.hand", "[][grow,fill][]", "", dress);
        this.desk = desk;
        hold = worded(new JToggleButton(), "trainer.hold", this::hold);
        hour = button("trainer.hour", () -> desk.perform(new SessionStep.Wait(60)));
        runOn = button("trainer.runOn", () -> desk.perform(new SessionStep.RunOn()));
        reveal = button("trainer.reveal", () -> desk.perform(new SessionStep.Reveal()));
        what.setName("trainer.what");
        says.setName("trainer.says");
        whatName.setLabelFor(what);
        sayName.setLabelFor(says);
        List.of(hold, hour, runOn, reveal).forEach(this::beside);
        body().add(whatName);
        body().add(what, "wmin 60");
        body().add(button("trainer.happen", this::happen), "growx, wrap");
        body().add(sayName);
        body().add(says, "wmin 60");
        body().add(button("trainer.say", this::say), "split 2, growx");
        body().add(button("trainer.ask", this::ask), "growx");
        dress(dress);
    }

    private void hold() {
        desk.perform(new SessionStep.Hold(hold.isSelected()));
    }

    private void happen() {
        desk.moment()
                .ifPresent(moment -> Named.picked(what).ifPresent(incident -> {
                    PracticeSession session = moment.session();
                    TankEvent event = incident.at(session.hours(), session);
                    desk.perform(new SessionStep.Inject(event, says.getText().strip()));
                    says.setText("");
                }));
    }

    /** Asks in the trainer's words, or what the trainee expects. */
    private void ask() {
        String words = says.getText().strip();
        desk.perform(new SessionStep.Ask(words.isEmpty() ? dress.text("trainer.expect") : words));
        says.setText("");
    }

    private void say() {
        String words = says.getText().strip();
        if (!words.isEmpty()) {
            desk.perform(new SessionStep.Say(words));
            says.setText("");
        }
    }

    @Override
    public void show(Moment moment) {
        PracticeSession session = moment.session();
        hold.setSelected(session.held());
        boolean runs = ClockCard.runs(session);
        hour.setEnabled(runs);
        runOn.setEnabled(runs);
        reveal.setEnabled(
                session.revealed().isEmpty() && !session.scenario().faults().isEmpty());
    }

    @Override
    public void dress(Dress other) {
        super.dress(other);
        whatName.setText(other.text("trainer.what"));
        sayName.setText(other.text("trainer.says"));
        what.getAccessibleContext().setAccessibleName(other.text("trainer.what"));
        says.getAccessibleContext().setAccessibleName(other.text("trainer.says"));
        Named.fill(what, Incident.values(), null, each -> other.words().say(each.words()));
    }
}
