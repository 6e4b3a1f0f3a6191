package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import java.awt.Insets;
import java.time.Duration;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The tank's clock: what time it is there, and ways to let it run. A real unit's clock only shows. */
public final class ClockRow extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int TICK_MS = 100;

    /** How much faster than life the clock runs. */
    private enum Pace {
        MINUTE(60),
        TEN_MINUTES(600),
        HOUR(3600),
        SIX_HOURS(21600);

        private final int seconds;

        Pace(int seconds) {
            this.seconds = seconds;
        }
    }

    private final JLabel now = new Caption();
    private final JToggleButton runs = new JToggleButton();
    private final JComboBox<Named<Pace>> pace = new JComboBox<>();
    private final JButton hour = new JButton();
    private final JButton day = new JButton();
    private final JButton settle = new JButton();
    private final Timer timer = new Timer(TICK_MS, e -> tick());
    private transient Optional<TankTime> time = Optional.empty();
    private transient Dress dress;

    /** A clock row without a clock. */
    public ClockRow(Dress dress) {
        super(new MigLayout("insets 0, gapx 4, fillx, hidemode 3", "[grow][][][][][]"));
        this.dress = dress;
        setOpaque(false);
        runs.setName("clock.run");
        pace.setName("clock.pace");
        hour.setName("clock.hour");
        day.setName("clock.day");
        settle.setName("clock.settle");
        runs.addActionListener(e -> runOrHold());
        hour.addActionListener(e -> time.ifPresent(clock -> clock.run(Duration.ofHours(1))));
        day.addActionListener(e -> time.ifPresent(clock -> clock.run(Duration.ofDays(1))));
        settle.addActionListener(e -> time.ifPresent(TankTime::runUntilSettled));
        for (AbstractButton button : new AbstractButton[] {runs, hour, day, settle}) {
            button.setMargin(new Insets(5, 7, 5, 7));
        }
        for (JComponent part : new JComponent[] {now, runs, pace, hour, day, settle}) {
            add(part);
        }
        dress(dress);
    }

    /** Shows another clock; the one before is held. */
    public void follow(Optional<TankTime> clock) {
        timer.stop();
        runs.setSelected(false);
        time = clock;
        setVisible(clock.isPresent());
        refresh();
    }

    private void runOrHold() {
        if (runs.isSelected()) {
            timer.start();
        } else {
            timer.stop();
        }
        Buttons.name(runs, dress, runs.isSelected() ? "clock.hold" : "clock.run");
    }

    private void tick() {
        Pace chosen = Named.picked(pace).orElse(Pace.MINUTE);
        time.ifPresent(clock -> clock.run(Duration.ofMillis((long) TICK_MS * chosen.seconds)));
    }

    /** Shows the time. */
    public void refresh() {
        time.ifPresent(clock -> {
            now.setText(dress.text("clock.now", Clock.invented(clock.start()).when(clock.now())));
            settle.setEnabled(!clock.settled());
        });
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        Buttons.name(runs, other, runs.isSelected() ? "clock.hold" : "clock.run");
        Buttons.name(hour, other, "clock.hour");
        Buttons.name(day, other, "clock.day");
        Buttons.name(settle, other, "clock.settle");
        Named.fill(pace, Pace.values(), null, each -> other.text("clock.pace." + each));
        pace.getAccessibleContext().setAccessibleName(other.text("clock.pace"));
        refresh();
    }
}
