package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A number with its name and unit, and under it, in words, what is wrong with it; scrolls into sight when it is reached. */
public final class FieldRow {
    private static final int AROUND_PX = 40;

    private final String component;
    private final NumberBox box;
    private final Prose name = new Prose();
    private final Prose fault = new Prose();

    /** @param component name of the value in the library's records */
    public FieldRow(String textKey, String component, Unit unit, Dress dress) {
        this.component = component;
        box = new NumberBox(textKey, unit, dress);
        fault.setName(textKey + ".fault");
        fault.setVisible(false);
        box.field().addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                JComponent field = box.field();
                field.scrollRectToVisible(
                        new Rectangle(0, -AROUND_PX, field.getWidth(), field.getHeight() + 2 * AROUND_PX));
                box.field().selectAll();
            }
        });
        fault.setForeground(dress.palette().danger());
    }

    /** Another name for those who look for the box by name. */
    public void name(String other) {
        box.field().setName(other);
        fault.setName(other + ".fault");
    }

    /** Name of the value in the library's records. */
    public String component() {
        return component;
    }

    /** The number, or nothing when the box is empty. */
    public OptionalDouble value() throws NumberBox.NotANumber {
        return box.value();
    }

    /** Shows a number; it is right until it is looked at. */
    public void show(double value) {
        box.show(value);
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
        fault.setText(words);
        fault.setVisible(true);
        box.field().getAccessibleContext().setAccessibleDescription(words);
    }

    /** Nothing is wrong any more. */
    public void right() {
        box.mark(false);
        fault.setVisible(false);
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
        sheet.add(fault, "span 3, growx, gapleft 12, wrap");
    }

    /** Other words or colours; to whoever does not see it the box tells its section too. */
    public void dress(Dress other, String section) {
        box.dress(other);
        name.setText(box.name());
        name.setForeground(other.palette().ink());
        box.field()
                .getAccessibleContext()
                .setAccessibleName(other.text(
                        "own.inSection",
                        section,
                        box.field().getAccessibleContext().getAccessibleName()));
        fault.setForeground(other.palette().danger());
    }
}
