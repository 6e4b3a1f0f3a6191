package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.tank.TrainingTank;
import java.time.Duration;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The tank's clock: what time it is there, and buttons that let it run. */
public final class ClockCard extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Clock clock = new Clock(TrainingTank.START);
    private final JLabel now = new JLabel();
    private final JButton hour = new JButton();
    private final JButton day = new JButton();
    private transient Dress dress;

    /** The clock of a desk. */
    public ClockCard(Desk desk, Dress dress) {
        super(new MigLayout("insets 0, gapx 8"));
        this.desk = desk;
        this.dress = dress;
        setOpaque(false);
        hour.setName("hourOn");
        day.setName("dayOn");
        hour.addActionListener(e -> desk.run(Duration.ofHours(1)));
        day.addActionListener(e -> desk.run(Duration.ofDays(1)));
        for (JComponent part : new JComponent[] {now, hour, day}) {
            add(part);
        }
        dress(dress);
    }

    /** Shows the time. */
    public void refresh() {
        now.setText(dress.words().say(clock.when(desk.now(), "clock.now")));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        Buttons.name(hour, other, "clock.hour");
        Buttons.name(day, other, "clock.day");
        refresh();
    }
}
