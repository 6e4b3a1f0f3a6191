package io.github.weirwise.demo.round;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.Forecast;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Saving;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Unit;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** Until when everything is left as it is, with a reminder to take along. */
final class LeaveCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 1.35f;
    private static final Duration A_DAY = Duration.ofDays(1);

    private final transient Desk desk;
    private final Prose until = new Prose();
    private final Prose flood = new Prose();
    private final Prose expected = new Prose();
    private final JButton calendar = new JButton();
    private final JButton copy = new JButton();
    private final JButton runOn = new JButton();
    private final JButton again = new JButton();
    private transient BiConsumer<Duration, Runnable> passing;
    private transient Dress dress;

    /** @param again begins the round anew */
    LeaveCard(Desk desk, Saving saving, Runnable again, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.desk = desk;
        this.dress = dress;
        passing = this::atOnce;
        until.setName("leave.until");
        Buttons.set(
                calendar,
                "leave.calendar",
                () -> saving.save("look-again.ics", () -> reminder().calendar()));
        Buttons.set(copy, "leave.copy", this::copy);
        Buttons.set(runOn, "leave.runOn", () -> runOn(again));
        Buttons.set(this.again, "leave.again", () -> again.run());
        for (Prose text : new Prose[] {until, flood, expected}) {
            body().add(text, "growx, wmin 0, wrap");
        }
        body().add(Buttons.row(runOn, calendar, copy, this.again), "growx");
        dress(dress);
    }

    private Optional<Forecast> forecast() {
        return Forecast.newest(desk.journal());
    }

    /** A look that was put off is asked for again on the next visit. */
    private Optional<Instant> judgeAt() {
        return desk.advice()
                .map(Advice::judgeAt)
                .map(at -> at.isAfter(desk.now()) ? at : desk.now().plus(A_DAY))
                .or(() -> forecast().map(Forecast::until));
    }

    /** Where the next visit is told of. */
    private Reminder reminder() {
        return new Reminder(
                desk.title(),
                desk.now(),
                judgeAt().orElse(desk.now()),
                desk.advice().flatMap(Advice::floodLookAt),
                until.getText(),
                flood.getText(),
                expected.getText());
    }

    private void copy() {
        if (!GraphicsEnvironment.isHeadless()) {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection(reminder().text()), null);
        }
        Buttons.name(copy, dress, "leave.copied");
    }

    /** Lets the time until the next look go by as this does it, which runs its second argument afterwards. */
    void passTimeBy(BiConsumer<Duration, Runnable> other) {
        passing = other;
    }

    private void atOnce(Duration wait, Runnable then) {
        ((TankTime) desk).run(wait);
        then.run();
    }

    private void runOn(Runnable then) {
        if (desk instanceof TankTime) {
            Duration wait =
                    judgeAt().map(at -> Duration.between(desk.now(), at)).orElse(Duration.ZERO);
            passing.accept(wait.isNegative() ? Duration.ZERO : wait, then);
        }
    }

    /** Shows until when. */
    void refresh() {
        var clock = desk.clock();
        until.setText(
                judgeAt().map(at -> dress.text("leave.until", clock.when(at))).orElse(""));
        flood.setText(desk.advice()
                .flatMap(Advice::floodLookAt)
                .map(at -> dress.text("leave.flood", clock.when(at)))
                .orElse(""));
        flood.setVisible(!flood.getText().isEmpty());
        expected.setText(forecast()
                .map(told -> dress.text(
                        "leave.expected",
                        QuantityRange.of(told.levelMm(), Unit.MILLIMETRE),
                        QuantityRange.of(told.mlPerDay(), Unit.MILLILITRE_PER_DAY)))
                .orElse(""));
        runOn.setVisible(desk instanceof TankTime);
        for (JComponent part : new JComponent[] {this, runOn, calendar}) {
            part.getAccessibleContext()
                    .setAccessibleDescription(
                            (until.getText() + "\n" + flood.getText() + "\n" + expected.getText()).strip());
        }
    }

    /** In one line. */
    String summary() {
        return until.getText();
    }

    /** Goes to the first button. */
    void goTo() {
        (runOn.isVisible() ? runOn : calendar).requestFocusInWindow();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        head(other.text("leave.title"));
        paper(other.palette());
        Font plain = UIManager.getFont("Label.font");
        until.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * LARGE));
        expected.setFont(Standing.COMPUTED.font(plain));
        expected.setForeground(Standing.COMPUTED.colour(other.palette()));
        Buttons.name(other, calendar, copy, runOn, again);
        refresh();
    }
}
