package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** A number that may be left empty, typed in the chosen units, read in metric ones. */
public final class NumberBox {
    private final String textKey;
    private final Unit unit;
    private final JLabel label = new Caption();
    private final JTextField field = new JTextField(5);
    private final JLabel symbol = new Caption();
    private Dress dress;
    private OptionalDouble shown = OptionalDouble.empty();
    private String shownText = "";

    public NumberBox(String textKey, Unit unit, Dress dress) {
        this.textKey = textKey;
        this.unit = unit;
        field.setName(textKey);
        dress(dress);
    }

    /** Something is typed that is no number. */
    public static final class NotANumber extends Exception {
        private static final long serialVersionUID = 1L;
        private final String typed;

        NotANumber(String typed) {
            super(typed);
            this.typed = typed;
        }

        public String typed() {
            return typed;
        }
    }

    /** The number, or nothing when the box is empty. */
    public OptionalDouble value() throws NotANumber {
        String typed = field.getText().strip();
        mark(false);
        if (typed.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (shown.isPresent() && typed.equals(shownText)) {
            return shown;
        }
        Number number = parse(typed);
        if (number == null) {
            mark(true);
            throw new NotANumber(typed);
        }
        double held = unit.fromShown(number.doubleValue(), dress.words().book().units());
        return OptionalDouble.of(unit == Unit.SALINITY ? SpecificGravity.salinity(held) : held);
    }

    /** By the language's own format first; a plain decimal point is understood everywhere. */
    private Number parse(String typed) {
        try {
            double plain = Double.parseDouble(typed);
            return Double.isFinite(plain) ? plain : null;
        } catch (NumberFormatException e) {
            NumberFormat format =
                    NumberFormat.getNumberInstance(dress.words().book().locale());
            ParsePosition position = new ParsePosition(0);
            Number number = format.parse(typed.replace(',', '.'), position);
            return position.getIndex() == typed.length() ? number : null;
        }
    }

    /** Marks the box as wrong, or as right again. */
    public void mark(boolean wrong) {
        field.putClientProperty("JComponent.outline", wrong ? "error" : null);
    }

    public void clear() {
        field.setText("");
        mark(false);
    }

    /** Shows a number, rounded; as long as nobody types another one it stays exact. */
    public void show(double value) {
        shown = OptionalDouble.of(value);
        shownText = dress.words().book().typed(value, unit);
        field.setText(shownText);
        mark(false);
    }

    /** Puts it in sight or out of it. */
    public void show(boolean there) {
        field.setVisible(there);
        symbol.setVisible(there);
    }

    /** The unit that stands behind it. */
    public JLabel symbol() {
        return symbol;
    }

    /** Where it is typed. */
    public JTextField field() {
        return field;
    }

    /** Other words; a number that stands in the box is told in the units that go with them. */
    public void dress(Dress other) {
        OptionalDouble held = OptionalDouble.empty();
        boolean otherUnits = dress != null
                && !dress.words().book().units().equals(other.words().book().units());
        if (otherUnits) {
            try {
                held = value();
            } catch (NotANumber e) {
                // What is no number is left as it was typed.
            }
        }
        dress = other;
        held.ifPresent(this::show);
        String name = other.text(textKey);
        label.setText(name);
        label.setLabelFor(field);
        String shown = unit.symbol(other.words().book().units());
        symbol.setText(shown);
        field.getAccessibleContext().setAccessibleName(shown.isEmpty() ? name : other.text("box.name", name, shown));
    }

    /** Label, box and unit one after another. */
    public void addTo(JPanel row, String last) {
        row.add(label);
        addBoxTo(row, last);
    }

    /** Box and unit, where something else names them. */
    public void addBoxTo(JPanel row, String last) {
        row.add(field, "w 50::");
        row.add(symbol, last);
    }

    /** What it is called. */
    public String name() {
        return label.getText();
    }

    /** The unit of the number that is held. */
    public Unit unit() {
        return unit;
    }

    /** Calls this whenever something else stands in the box. */
    public void onChange(Runnable listener) {
        onTyping(field, listener);
    }

    /** Calls this whenever something else stands in a field. */
    static void onTyping(JTextField field, Runnable listener) {
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                listener.run();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                listener.run();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // A plain text has no attributes.
            }
        });
    }
}
