package io.github.weirwise.demo.round;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.advice.Step;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.look.ExpectWords;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The one thing to do, larger than all else, with its cautions and what it needs to be finished: done, found, or cannot. */
final class DoCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final float LARGE = 1.5f;
    private static final int DOUBLE_CLICK_MS = 500;

    private final transient Desk desk;
    private final Prose what = new Prose();
    private final Prose how = new Prose();
    private final Prose cautions = new Prose();
    private final Prose expected = new Prose();
    private final Prose said = new Prose();
    private final JPanel place = new JPanel(new MigLayout("insets 0, gapx 6, fillx"));
    private final transient NumberBox crest;
    private final JButton done = new JButton();
    private final JButton found = new JButton();
    private final JButton simulate = new JButton();
    private final JButton cannot = new JButton();
    private final JButton later = new JButton();
    private transient Optional<Advice> shown = Optional.empty();
    private transient Optional<Ask> ask = Optional.empty();
    /** Whether the step is waited for here. */
    private boolean awaited;
    /** Whether the step that is shown was painted where somebody sees it, and when. */
    private boolean painted;

    private long paintedAtMs;

    private transient Dress dress;

    DoCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "");
        this.desk = desk;
        this.dress = dress;
        crest = new NumberBox("do.crest", Unit.MILLIMETRE, dress);
        place.setOpaque(false);
        what.setName("do.what");
        said.setName("do.said");
        Buttons.set(done, "do.done", this::done);
        Buttons.set(found, "do.found", this::found);
        Buttons.set(simulate, "do.simulate", () -> desk.takeStep());
        Buttons.set(cannot, "do.cannot", () -> look().ifPresent(desk::cannotLook));
        Buttons.set(
                later,
                "do.later",
                () -> shown.ifPresent(advice -> desk.leaveStep(dress.words().say(advice.what()))));
        for (Prose text : new Prose[] {said, what, cautions, how}) {
            body().add(text, "growx, wmin 0, wrap");
        }
        body().add(place, "growx, wmin 0, wrap");
        body().add(Buttons.row(done, simulate, found, later, cannot), "growx, wrap");
        body().add(expected, "growx, wmin 0, wrap");
        allow(false);
        dress(dress);
    }

    private Optional<LookKind> look() {
        return shown.map(Advice::step).filter(Step.Look.class::isInstance).map(step -> ((Step.Look) step).what());
    }

    private Optional<Part> part() {
        return shown.map(Advice::step)
                .filter(Step.ServicePart.class::isInstance)
                .map(step -> ((Step.ServicePart) step).part());
    }

    /** What the step asks for was done; a look is done by what was seen. */
    void done() {
        if (shown.isEmpty() || !done.isEnabled() || isOfAClickBefore()) {
            return;
        }
        if (look().isEmpty()) {
            desk.takeStep();
            return;
        }
        Faults faults = new Faults(dress);
        Optional<Observation> seen = ask.flatMap(each -> each.seen(faults));
        if (seen.isPresent()) {
            note(new Reading(desk.now(), "", List.of(seen.get())));
        } else {
            refuse(faults, "do.lookFirst");
            goTo();
        }
    }

    /** The second half of a double click that began before there was anything to read. */
    private boolean isOfAClickBefore() {
        return EventQueue.getCurrentEvent() instanceof MouseEvent click
                && click.getClickCount() > 1
                && click.getWhen() - paintedAtMs < DOUBLE_CLICK_MS;
    }

    /** A step can be done once it was seen: what is pressed before that is pressed for something else. */
    @Override
    public void paint(Graphics g) {
        super.paint(g);
        if (!painted && shown.isPresent() && isShowing()) {
            painted = true;
            EventQueue.invokeLater(this::allow);
        }
    }

    private void allow() {
        if (painted) {
            paintedAtMs = System.currentTimeMillis();
            allow(true);
            if (awaited) {
                goTo();
            }
        }
    }

    private void allow(boolean on) {
        done.setEnabled(on);
        found.setEnabled(on);
    }

    /** Something else was found than what the step takes for granted. */
    private void found() {
        if (isOfAClickBefore()) {
            return;
        }
        if (part().isPresent()) {
            note(new Reading(desk.now(), "", List.of(new Observation.Inspection(part().get(), Finding.GOOD))));
            return;
        }
        Faults faults = new Faults(dress);
        OptionalDouble typed = faults.number(crest);
        Optional<WeirMove> move = typed.isEmpty()
                ? Optional.empty()
                : faults.make(crest, () -> new WeirMove(desk.now(), typed.getAsDouble(), false));
        move.ifPresentOrElse(this::note, () -> {
            refuse(faults, "do.crestFirst");
            crest.field().requestFocusInWindow();
        });
    }

    private void note(JournalEntry entry) {
        desk.note(List.of(entry), () -> say(dress.text("do.noted", EntryWords.of(entry))));
    }

    private void refuse(Faults faults, String missing) {
        say(faults.none() ? dress.text(missing) : faults.words());
        said.setForeground(dress.palette().danger());
    }

    private void say(String text) {
        said.setText(text);
        said.setForeground(dress.palette().muted());
        said.setVisible(!text.isEmpty());
        revalidate();
    }

    /** Shows the advice there is; while there is none it is being worked out. */
    void refresh() {
        if (desk.advice().equals(shown)) {
            return;
        }
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        boolean here = focus != null && SwingUtilities.isDescendingFrom(focus, this);
        shown = desk.advice();
        painted = false;
        // What is typed into the box of a look was meant for it.
        allow(shown.isPresent() && (look().isPresent() || !isDisplayable()));
        fill();
        if (here || awaited) {
            // What had the focus may be gone, and who typed a moment ago types on.
            goTo();
        }
    }

    private void fill() {
        what.setText(shown.map(advice -> dress.words().say(advice.what())).orElseGet(() -> dress.text("do.thinking")));
        cautions.setText(shown.stream()
                .flatMap(advice -> advice.cautions().stream())
                .map(each -> "\u2022 " + dress.words().book().say(each))
                .collect(Collectors.joining("\n")));
        cautions.setVisible(!cautions.getText().isEmpty());
        how.setText(shown.map(this::how).orElse(""));
        how.setVisible(!how.getText().isEmpty());
        expected.setText(shown.map(advice -> dress.text("do.expected", ExpectWords.of(advice)))
                .orElse(""));
        boolean move =
                shown.filter(advice -> advice.step() instanceof Step.MoveWeir).isPresent();
        boolean hold =
                shown.filter(advice -> advice.step() instanceof Step.Hold).isPresent();
        Buttons.name(done, dress, look().isPresent() ? "do.note" : hold ? "do.leave" : "do.done");
        Buttons.name(found, dress, part().isPresent() ? "do.foundFine" : "do.foundCrest");
        found.setVisible(part().isPresent() || move);
        simulate.setVisible(look().isPresent() && desk instanceof TankTime);
        cannot.setVisible(look().isPresent());
        later.setVisible(shown.isPresent() && !hold);
        ask = look().map(kind -> Ask.of(kind, dress));
        place.removeAll();
        ask.ifPresent(each -> {
            Prose name = new Prose();
            name.setText(LookWords.name(look().orElseThrow(), dress));
            place.add(name, "growx, wmin 0, wrap");
            place.add(each.part(), "wmin 0");
        });
        if (move) {
            crest.clear();
            crest.addTo(place, "pushx");
        }
        place.setVisible(ask.isPresent() || move);
        // Where the focus is when a step comes, it is told.
        for (JComponent part : List.of(this, done, ask.map(Ask::first).orElse(done))) {
            part.getAccessibleContext()
                    .setAccessibleDescription(
                            (what.getText() + "\n" + cautions.getText() + "\n" + how.getText()).strip());
        }
        revalidate();
        repaint();
    }

    private String how(Advice advice) {
        if (advice.step() instanceof Step.Look look) {
            return LookWords.how(look.what(), dress);
        }
        if (advice.step() instanceof Step.MoveWeir move) {
            return dress.text("how.WEIR", Quantity.of(move.toCrestMm(), Unit.MILLIMETRE));
        }
        return "";
    }

    /** What it says, in one line. */
    String summary() {
        return shown.map(advice -> dress.words().say(advice.what())).orElse("");
    }

    /** Goes to the box of a look, else to the first button. */
    void goTo() {
        // What is pressed before there is a step to be read must not be lost on it.
        awaited = !done.isEnabled();
        JComponent there = awaited ? this : ask.map(Ask::first).orElse(done);
        there.requestFocusInWindow();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        head(other.text("do.title"));
        paper(other.palette());
        Font plain = UIManager.getFont("Label.font");
        what.setFont(plain.deriveFont(Font.BOLD, plain.getSize2D() * LARGE));
        expected.setFont(Standing.COMPUTED.font(plain));
        expected.setForeground(Standing.COMPUTED.colour(other.palette()));
        cautions.setForeground(other.palette().ink());
        crest.dress(other);
        Buttons.name(other, simulate, cannot, later);
        say("");
        fill();
    }
}
