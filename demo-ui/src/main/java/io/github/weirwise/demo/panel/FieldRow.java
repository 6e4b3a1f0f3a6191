package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Bounds;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A number with its name and unit, and under it, in words, what is wrong with it; scrolls into sight when it is reached. */
public final class FieldRow {
    private static final int AROUND_PX = 40;

    private final String component;
    private final Unit unit;
    private final double scale;
    private final NumberBox box;
    private final Prose name = new Prose();
    private final JPanel below = new JPanel(new BorderLayout());
    private Optional<Prose> fault = Optional.empty();
    private Dress dress;

    /** @param component name of the value in the library's records */
    public FieldRow(String textKey, String component, Unit unit, Dress dress) {
        this(textKey, component, unit, 1, dress);
    }

    /** @param scale how many of what is typed make one of what is held */
    public FieldRow(String textKey, String component, Unit unit, double scale, Dress dress) {
        this.component = component;
        this.unit = unit;
        this.scale = scale;
        box = new NumberBox(textKey, unit, dress);
        below.setOpaque(false);
        below.setVisible(false);
        box.field().addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                JComponent field = box.field();
                field.scrollRectToVisible(
                        new Rectangle(0, -AROUND_PX, field.getWidth(), field.getHeight() + 2 * AROUND_PX));
                box.field().selectAll();
            }
        });
        dress(dress);
    }

    /** Another name for those who look for the box by name. */
    public void name(String other) {
        box.field().setName(other);
    }

    /** Name of the value in the library's records. */
    public String component() {
        return component;
    }

    /** The number, or nothing when the box is empty. */
    public OptionalDouble value() throws NumberBox.NotANumber {
        OptionalDouble typed = box.value();
        return typed.isPresent() ? OptionalDouble.of(typed.getAsDouble() / scale) : typed;
    }

    /** Limits of the value that is held, as limits of what is typed. */
    Bounds typed(Range held) {
        return new Bounds(scale * held.low(), scale * held.high(), unit);
    }

    /** Shows a number; it is right until it is looked at. */
    public void show(double value) {
        box.show(scale * value);
        right();
    }

    /** Empties the box. */
    public void clear() {
        box.clear();
        right();
    }

    /** Says what is wrong. */
    public void wrong(String words) {
        box.mark(true);
        Prose told = fault.orElseGet(this::makeFault);
        told.setText(words);
        below.setVisible(true);
        box.field().getAccessibleContext().setAccessibleDescription(words);
    }

    private Prose makeFault() {
        Prose made = new Prose();
        made.setName(box.field().getName() + ".fault");
        made.setForeground(dress.palette().danger());
        below.add(made);
        fault = Optional.of(made);
        return made;
    }

    /** Nothing is wrong any more. */
    public void right() {
        box.mark(false);
        below.setVisible(false);
        box.field().getAccessibleContext().setAccessibleDescription(null);
    }

    /** Takes it up or leaves it out. */
    public void enable(boolean on) {
        box.field().setEnabled(on);
    }

    /** Goes there. */
    public void goTo() {
        box.field().requestFocusInWindow();
    }

    /** Puts it into a sheet of three columns. */
    public void addTo(JPanel sheet) {
        sheet.add(name, "growx, wmin 0");
        box.addBoxTo(sheet, "wrap");
        sheet.add(below, "span 3, growx, gapleft 12, wrap");
    }

    /** Puts two beside each other into a sheet of six columns; {@code right} may be null. */
    public static void pair(JPanel sheet, FieldRow left, FieldRow right) {
        sheet.add(left.name, "growx, wmin 0");
        left.box.addBoxTo(sheet, right == null ? "wrap" : "");
        if (right != null) {
            sheet.add(right.name, "growx, wmin 0");
            right.box.addBoxTo(sheet, "wrap");
        }
        sheet.add(left.below, "span 3, growx, wmin 0, hidemode 2" + (right == null ? ", wrap" : ""));
        if (right != null) {
            sheet.add(right.below, "span 3, growx, wmin 0, hidemode 2, wrap");
        }
    }

    /** Other words or colours; to whoever does not see it the box tells its section too. */
    public void dress(Dress other, String section) {
        dress(other);
        box.field()
                .getAccessibleContext()
                .setAccessibleName(other.text(
                        "own.inSection",
                        section,
                        box.field().getAccessibleContext().getAccessibleName()));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        box.dress(other);
        name.setText(box.name());
        name.setForeground(other.palette().ink());
        fault.ifPresent(told -> told.setForeground(other.palette().danger()));
    }
}
