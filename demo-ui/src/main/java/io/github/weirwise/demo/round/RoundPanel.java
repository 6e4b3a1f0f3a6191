package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.HeldFocus;
import io.github.weirwise.demo.panel.HeldKey;
import io.github.weirwise.demo.panel.Room;
import io.github.weirwise.demo.panel.Saving;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/**
 * The round of a visit: the same cards in the same order every time. The one that is up is open, the others are a line each;
 * Enter goes on, Escape goes back.
 */
public final class RoundPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    /** What was told this lately was told on this visit. */
    private static final Duration VISIT = Duration.ofHours(2);

    /** Where the visit is. */
    private enum Stage {
        READ,
        DO,
        LEAVE
    }

    private final transient Desk desk;
    private final transient Runnable asking;
    private final transient Saving saving;
    private ExpectedCard expected;
    private ReadCard read;
    private DoCard one;
    private UpkeepCard upkeep;
    private LeaveCard leave;
    private boolean built;
    private final Map<Stage, JButton> lines = new EnumMap<>(Stage.class);
    private Stage stage;
    private final transient HeldFocus focus = new HeldFocus(this);
    private final transient HeldKey enter = new HeldKey();
    private boolean asked;
    private transient Runnable typing = () -> {};
    private transient Dress dress;

    /**
     * The round of a desk, empty until its {@link #steps} are done.
     *
     * @param asking asks for advice from all that is in the journal, and hands it to the desk
     */
    public RoundPanel(Desk desk, Runnable asking, Saving saving, Dress dress) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 8, hidemode 3", "[grow,fill]", ""));
        this.desk = desk;
        this.asking = asking;
        this.saving = saving;
        this.dress = dress;
        setOpaque(false);
        stage = begun() ? Stage.LEAVE : Stage.READ;
    }

    /** What makes it, piece by piece, so that keys and mouse are heard in between. */
    public List<Runnable> steps() {
        Map<LookKind, Ask> asks = new EnumMap<>(LookKind.class);
        List<Runnable> steps = new ArrayList<>();
        ReadCard.USUAL.forEach(look -> steps.add(() -> asks.put(look, Ask.of(look, dress))));
        steps.addAll(List.of(
                () -> expected = new ExpectedCard(desk, dress),
                () -> read = new ReadCard(desk, asks, () -> turn(Stage.DO), dress),
                () -> one = new DoCard(desk, dress),
                () -> upkeep = new UpkeepCard(desk, saving, dress),
                () -> leave = new LeaveCard(desk, saving, () -> turn(Stage.READ), dress),
                () -> add(expected),
                () -> card(Stage.READ, read),
                () -> card(Stage.DO, one),
                () -> card(Stage.LEAVE, leave),
                () -> add(upkeep),
                this::put));
        return steps;
    }

    private void put() {
        read.onTyped(this::typed);
        // The adviser hears of what was done, and says anew until when to leave it.
        upkeep.onDone(() -> turn(Stage.DO));
        Buttons.onKey(
                this,
                WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
                KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
                () -> turn(Stage.values()[Math.max(0, stage.ordinal() - 1)]));
        Buttons.onKey(
                this, WHEN_IN_FOCUSED_WINDOW, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), enter::released);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "enter");
        getActionMap().put("enter", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                // A key that is held down goes on by one step, not through the visit.
                if (enter.pressed(e.getWhen())) {
                    goOn();
                }
            }
        });
        built = true;
        refresh();
    }

    /** What is seen under the cards where the screen is high enough. */
    public void below(Room room) {
        add(room, "grow, push, h 0:0:");
    }

    private boolean begun() {
        return desk.stepTaken()
                || Forecast.newest(desk.journal())
                        .filter(told -> told.given().plus(VISIT).isAfter(desk.now())
                                && !(desk instanceof io.github.weirwise.demo.desk.TankTime))
                        .isPresent();
    }

    /** Lets the time until the next look go by as this does it, which runs its second argument afterwards. */
    public void passTimeBy(BiConsumer<Duration, Runnable> passing) {
        leave.passTimeBy(passing);
    }

    private void card(Stage of, JComponent card) {
        JButton line = new JButton();
        line.setName("round." + of);
        line.setHorizontalAlignment(SwingConstants.LEADING);
        line.addActionListener(e -> turn(of));
        lines.put(of, line);
        add(line, "wmin 0");
        add(card, "wmin 0");
        show(of, card, "");
    }

    private void goOn() {
        switch (stage) {
            case READ -> read.noteIt();
            case DO -> one.done();
            case LEAVE -> {
                // The visit is over; what comes next is said on the buttons.
            }
        }
    }

    private void turn(Stage to) {
        stage = to;
        refresh();
        goTo();
    }

    /** Goes to where typing goes on. */
    public void goTo() {
        switch (stage) {
            case READ -> read.goTo();
            case DO -> one.goTo();
            case LEAVE -> leave.goTo();
        }
    }

    /** Asks for the one thing to do. */
    public void ask() {
        turn(Stage.DO);
    }

    /** Calls this whenever something is typed, picked or noted. */
    public void onTyped(Runnable listener) {
        typing = listener;
    }

    private void typed() {
        expected.refresh(read.draft());
        typing.run();
    }

    /** Shows what is so now. */
    public void refresh() {
        if (built) {
            focus.during(this::change);
        }
    }

    private void change() {
        if (stage == Stage.DO && desk.stepTaken()) {
            stage = Stage.LEAVE;
            java.awt.EventQueue.invokeLater(this::goTo);
        }
        if (desk.advice().isPresent()) {
            asked = false;
        } else if (stage == Stage.DO && !asked && !desk.busy()) {
            asked = true;
            asking.run();
        }
        expected.refresh(read.draft());
        read.refresh();
        one.refresh();
        upkeep.refresh();
        leave.refresh();
        show(Stage.READ, read, read.summary());
        show(Stage.DO, one, one.summary());
        show(Stage.LEAVE, leave, stage == Stage.LEAVE ? leave.summary() : "");
        upkeep.setVisible(upkeep.isVisible() && stage != Stage.READ);
        revalidate();
        repaint();
    }

    private void show(Stage of, JComponent card, String summary) {
        card.setVisible(stage == of);
        JButton line = lines.get(of);
        line.setVisible(stage != of);
        line.setEnabled(of.ordinal() < stage.ordinal() || of == Stage.DO && stage == Stage.READ);
        String name = dress.text("round." + of);
        line.setText(
                summary.isEmpty() || of.ordinal() > stage.ordinal()
                        ? name
                        : dress.text("round.line", name, summary.replace('\n', ' ')));
        line.setToolTipText(line.getText());
        line.getAccessibleContext().setAccessibleName(line.getText());
    }

    /** What stands in the boxes, by their names; empty when nothing does. */
    public Map<String, String> kept() {
        return read.kept();
    }

    /** Puts back what was typed and not noted. */
    public void again(Map<String, String> kept) {
        read.again(kept);
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        if (!built) {
            return;
        }
        expected.dress(other);
        read.dress(other);
        one.dress(other);
        upkeep.dress(other);
        leave.dress(other);
        refresh();
    }
}
