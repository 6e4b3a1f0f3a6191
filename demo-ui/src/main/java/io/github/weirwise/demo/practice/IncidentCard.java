package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.tank.TankEvent;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;

/** The trainer's hand on the session: stop the clock, let time pass, let something happen, say something, show the truth. */
final class IncidentCard extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final transient PracticeDesk desk;
    private final JToggleButton hold = new JToggleButton();
    private final JButton hour = new JButton();
    private final JButton runOn = new JButton();
    private final JButton reveal = new JButton();
    private final JLabel whatName = new Caption();
    private final JComboBox<Named<Incident>> what = new JComboBox<>();
    private final JLabel sayName = new Caption();
    private final JTextField says = new JTextField();
    private final JButton happen = new JButton();
    private final JButton say = new JButton();
    private final JButton ask = new JButton();
    private transient Dress dress;

    IncidentCard(PracticeDesk desk, Dress dress) {
        super(dress.palette(), "[][grow,fill][]", "");
        this.desk = desk;
        hold.setName("trainer.hold");
        hour.setName("trainer.hour");
        runOn.setName("trainer.runOn");
        reveal.setName("trainer.reveal");
        what.setName("trainer.what");
        says.setName("trainer.says");
        happen.setName("trainer.happen");
        say.setName("trainer.say");
        ask.setName("trainer.ask");
        whatName.setLabelFor(what);
        sayName.setLabelFor(says);
        hold.addActionListener(e -> desk.perform(new SessionStep.Hold(hold.isSelected())));
        hour.addActionListener(e -> desk.perform(new SessionStep.Wait(60)));
        runOn.addActionListener(e -> desk.perform(new SessionStep.RunOn()));
        reveal.addActionListener(e -> desk.perform(new SessionStep.Reveal()));
        happen.addActionListener(e -> happen());
        say.addActionListener(e -> say());
        ask.addActionListener(e -> ask());
        beside(hold);
        beside(hour);
        beside(runOn);
        beside(reveal);
        body().add(whatName);
        body().add(what, "wmin 60");
        body().add(happen, "growx, wrap");
        body().add(sayName);
        body().add(says, "wmin 60");
        body().add(say, "split 2, growx");
        body().add(ask, "growx");
        dress(dress);
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
        boolean runs = !session.over() && !session.held() && session.questions().isEmpty();
        hour.setEnabled(runs);
        runOn.setEnabled(runs);
        reveal.setEnabled(
                session.revealed().isEmpty() && !session.scenario().faults().isEmpty());
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        head(other.text("trainer.hand"));
        paper(other.palette());
        whatName.setText(other.text("trainer.what"));
        sayName.setText(other.text("trainer.says"));
        what.getAccessibleContext().setAccessibleName(other.text("trainer.what"));
        says.getAccessibleContext().setAccessibleName(other.text("trainer.says"));
        Named.fill(what, Incident.values(), null, each -> other.words().say(each.words()));
        Buttons.name(hold, other, "trainer.hold");
        Buttons.name(hour, other, "trainer.hour");
        Buttons.name(runOn, other, "trainer.runOn");
        Buttons.name(reveal, other, "trainer.reveal");
        Buttons.name(happen, other, "trainer.happen");
        Buttons.name(say, other, "trainer.say");
        Buttons.name(ask, other, "trainer.ask");
    }
}
