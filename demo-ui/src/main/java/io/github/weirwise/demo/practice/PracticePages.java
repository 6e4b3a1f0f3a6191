package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.skimmer.OperatingPoint;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The trainee's screens: first the choice of a scenario, then the session. */
public final class PracticePages {
    private final PracticeDesk desk;
    private final Saving saving;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final JPanel controls = new JPanel(new BorderLayout());
    private final ChoosePage choose;
    private final ClockCard clock;
    private Optional<SessionPanel> session = Optional.empty();
    private Dress dress;

    /** Screens for a desk; a trainer's window is opened, and a scenario's file asked for, by the given actions. */
    public PracticePages(PracticeDesk desk, Runnable openTrainer, Runnable openFile, Saving saving, Dress dress) {
        this.desk = desk;
        this.saving = saving;
        this.dress = dress;
        panel.setOpaque(false);
        controls.setOpaque(false);
        choose = new ChoosePage(desk, openFile, dress);
        clock = new ClockCard(desk, openTrainer, dress);
        put(choose);
        desk.onChange(this::refresh);
    }

    private void put(JComponent page) {
        panel.removeAll();
        panel.add(page);
        panel.revalidate();
        panel.repaint();
    }

    /** Offers these scenarios. */
    public void offer(List<Scenario> scenarios) {
        choose.offer(scenarios);
    }

    public JComponent panel() {
        return panel;
    }

    /** What stands under the picture. */
    public JComponent controls() {
        return controls;
    }

    /** What the picture shows: the session's unit, or that of the scenario that is picked. */
    public Optional<Scene> scene() {
        return desk.moment()
                .map(Moment::scene)
                .or(() -> choose.scenario()
                        .map(each -> Scene.atAGlance(
                                each.unit(),
                                each.start().settings(),
                                OperatingPoint.of(each.unit(), each.start().settings()),
                                each.unit().target().skimmateMlPerDay(),
                                0)));
    }

    /** What is worked on. */
    public Optional<String> title() {
        return desk.moment().map(moment -> moment.session().scenario().title());
    }

    /** The weir was moved in the picture; here that is a plan, not yet an act. */
    public void plan(double crestMm) {
        desk.moment()
                .ifPresent(moment -> session.ifPresent(
                        page -> page.plan(crestMm - moment.session().markMm())));
    }

    /** Shows what is so now. */
    public void refresh() {
        Optional<Moment> moment = desk.moment();
        if (moment.isEmpty()) {
            if (session.isPresent()) {
                session = Optional.empty();
                put(choose);
                controls.removeAll();
                controls.revalidate();
            }
            return;
        }
        if (session.isEmpty()) {
            SessionPanel page = new SessionPanel(desk, moment.get(), saving, dress);
            session = Optional.of(page);
            put(page);
            controls.add(clock);
            controls.revalidate();
        }
        session.get().show(moment.get());
        clock.show(moment.get());
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        choose.dress(other);
        clock.dress(other);
        session.ifPresent(page -> page.dress(other));
        refresh();
    }
}
