package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.History;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import java.awt.Insets;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
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
    private final JButton skip = new JButton();
    private final JLabel told = new Caption();
    private final Timer timer = new Timer(TICK_MS, e -> tick());
    private final transient Passage passage = new Passage();
    private transient BooleanSupplier moves = () -> false;
    private transient Instant toldAt = Instant.EPOCH;
    private transient Optional<TankTime> time = Optional.empty();
    private transient Dress dress;

    /** A clock row without a clock. */
    public ClockRow(Dress dress) {
        super(new MigLayout("insets 0, gapx 4, fillx, hidemode 3", "[][grow][][][][]"));
        this.dress = dress;
        setOpaque(false);
        pace.setName("clock.pace");
        Buttons.set(runs, "clock.run", this::runOrHold);
        told.setName("clock.told");
        Buttons.set(hour, "clock.hour", () -> pass(Optional.of(Duration.ofHours(1)), hour::requestFocusInWindow));
        Buttons.set(day, "clock.day", () -> pass(Optional.of(Duration.ofDays(1)), day::requestFocusInWindow));
        Buttons.set(settle, "clock.settle", () -> pass(Optional.empty(), hour::requestFocusInWindow));
        Buttons.set(skip, "clock.skip", () -> passage.skip());
        skip.setVisible(false);
        told.setVisible(false);
        Buttons.onKey(
                this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), passage::skip);
        for (AbstractButton button : new AbstractButton[] {runs, hour, day, settle, skip}) {
            button.setMargin(new Insets(5, 7, 5, 7));
        }
        for (JComponent part : new JComponent[] {runs, pace, hour, day, skip}) {
            add(part);
        }
        add(settle);
        add(now, "newline, span, split 2");
        add(told, "growx, w 40:40:");
        dress(dress);
    }

    /** Shows another clock; the one before is held. */
    public void follow(Optional<TankTime> clock) {
        timer.stop();
        passage.cut();
        runs.setSelected(false);
        told.setVisible(false);
        time = clock;
        setVisible(clock.isPresent());
        refresh();
    }

    /** Whether time is seen to pass, or jumps. */
    public void moves(BooleanSupplier motion) {
        moves = motion;
    }

    /**
     * Lets time go by: before the eyes, and skipped by button or Escape, where pictures move; else at once. Then level and amount
     * before and after are told.
     *
     * @param wait how long; empty for until the foam has settled
     * @param then done when it has gone by
     */
    public void pass(Optional<Duration> wait, Runnable then) {
        time.ifPresent(clock -> {
            passage.skip();
            History.Point before = newest(clock);
            Runnable end = () -> {
                tell(before, newest(clock));
                refresh();
                then.run();
            };
            if (moves.getAsBoolean()) {
                passage.play(clock, wait, end);
                told.setVisible(false);
                refresh();
                skip.requestFocusInWindow();
            } else {
                Passage.finish(clock, wait);
                end.run();
            }
        });
    }

    private static History.Point newest(TankTime clock) {
        List<History.Point> points = clock.points();
        return points.get(points.size() - 1);
    }

    private void tell(History.Point before, History.Point after) {
        toldAt = after.at();
        String from = dress.words().say(before.submergenceMm(), Unit.MILLIMETRE);
        String to = dress.words().say(after.submergenceMm(), Unit.MILLIMETRE);
        String less = dress.words().say(before.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY);
        String more = dress.words().say(after.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY);
        told.setText(
                from.equals(to)
                        ? dress.text("clock.toldAmount", less, more)
                        : dress.text("clock.told", from, less, to, more));
        told.setVisible(true);
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
            passage.watch();
            boolean passes = passage.runs();
            told.setVisible(told.isVisible() && clock.now().equals(toldAt));
            skip.setVisible(passes);
            settle.setVisible(!passes);
            settle.setEnabled(!clock.settled());
            for (JComponent part : new JComponent[] {runs, pace, hour, day}) {
                part.setEnabled(!passes);
            }
        });
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        Buttons.name(runs, other, runs.isSelected() ? "clock.hold" : "clock.run");
        Buttons.name(other, hour, day, settle, skip);
        Named.fill(pace, Pace.values(), null, each -> other.text("clock.pace." + each));
        pace.getAccessibleContext().setAccessibleName(other.text("clock.pace"));
        refresh();
    }
}
