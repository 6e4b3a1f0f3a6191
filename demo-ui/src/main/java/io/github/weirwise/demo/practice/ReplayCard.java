package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.practice.LogLine;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.report.Phrase;
import java.util.function.DoubleConsumer;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import javax.swing.Timer;

/** Runs through a session again: the picture shows the tank of the hour that the slider stands at. */
final class ReplayCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final int FRAME_MS = 100;
    /** The whole session as a film of seven seconds. */
    private static final int FRAMES = 70;

    private static final int STEPS = 700;

    private final transient PracticeSession session;
    private final transient DoubleConsumer show;
    private final transient Dress dress;
    private final JSlider time = new JSlider(0, STEPS, STEPS);
    private final JToggleButton play = new JToggleButton();
    private final Prose about = new Prose();
    private final transient Timer film;

    ReplayCard(PracticeSession session, DoubleConsumer show, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[][]");
        this.session = session;
        this.show = show;
        this.dress = dress;
        film = new Timer(FRAME_MS, e -> frame());
        time.setName("replay.time");
        time.setOpaque(false);
        time.addChangeListener(e -> tell());
        time.getAccessibleContext().setAccessibleName(dress.text("replay.time"));
        play.setName("replay.play");
        play.addActionListener(e -> play());
        Buttons.name(play, dress, "replay.play");
        about.setName("replay.about");
        beside(play);
        body().add(time, "growx, wrap");
        body().add(about, "growx");
        head(dress.text("replay.title"));
        paper(dress.palette());
        tell();
    }

    private void play() {
        if (!play.isSelected()) {
            film.stop();
            return;
        }
        if (time.getValue() == STEPS) {
            time.setValue(0);
        }
        film.start();
    }

    private void frame() {
        time.setValue(Math.min(STEPS, time.getValue() + STEPS / FRAMES));
        if (time.getValue() == STEPS || !isShowing()) {
            stop();
        }
    }

    /** Stops the film. */
    void stop() {
        film.stop();
        play.setSelected(false);
    }

    double hours() {
        double from = session.scenario().start().arrivesAtHour();
        return from + (session.hours() - from) * time.getValue() / STEPS;
    }

    private void tell() {
        double now = hours();
        Phrase when = new TankClock(session).when(now);
        about.setText(session.log().stream()
                .filter(line -> line.step() instanceof SessionStep.Do && line.fromHours() <= now)
                .reduce((first, last) -> last)
                .map(line -> dress.text("replay.after", when, act(line)))
                .orElseGet(() -> dress.text("replay.before", when)));
        show.accept(now);
    }

    private static Phrase act(LogLine line) {
        return ((SessionStep.Do) line.step()).act().words();
    }
}
