package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.UnitSystem;
import java.util.function.DoubleConsumer;
import javax.swing.JFormattedTextField;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/** One number that can be set by slider, by keys or by typing; told in the chosen units, held in metric ones. */
final class Knob {
    private static final double JUST_DIFFERENT = 1e-9;

    private final String textKey;
    private final Unit unit;
    private final double low;
    private final double high;
    private final double step;
    private final JLabel label = new Caption();
    private final JSlider slider;
    private final SpinnerNumberModel numbers = new SpinnerNumberModel(0.0, 0.0, 0.0, 1.0);
    private final JSpinner spinner = new JSpinner(numbers);
    private DoubleConsumer listener = value -> {};
    private Dress dress;
    private double value;
    private boolean showing;

    Knob(String textKey, Unit unit, double low, double high, double step, Dress dress) {
        this.textKey = textKey;
        this.unit = unit;
        this.low = low;
        this.high = high;
        this.step = step;
        this.value = low;
        slider = new JSlider(0, (int) Math.round((high - low) / step));
        slider.setName(textKey + ".slider");
        spinner.setName(textKey + ".number");
        slider.addChangeListener(e -> pull(low + slider.getValue() * step));
        spinner.addChangeListener(e -> pull(unit.fromShown(((Number) spinner.getValue()).doubleValue(), system())));
        dress(dress);
    }

    void onChange(DoubleConsumer other) {
        listener = other;
    }

    private UnitSystem system() {
        return dress.words().book().units();
    }

    private void pull(double wanted) {
        if (showing) {
            return;
        }
        double limited = Math.max(low, Math.min(high, wanted));
        if (Math.abs(limited - value) > JUST_DIFFERENT) {
            show(limited);
            listener.accept(limited);
        }
    }

    /** Shows a value without telling anybody. */
    void show(double other) {
        showing = true;
        try {
            value = other;
            slider.setValue((int) Math.round((other - low) / step));
            spinner.setValue(unit.toShown(other, system()));
        } finally {
            showing = false;
        }
    }

    void dress(Dress other) {
        dress = other;
        showing = true;
        try {
            numbers.setMinimum(unit.toShown(low, system()));
            numbers.setMaximum(unit.toShown(high, system()));
            numbers.setStepSize(unit.toShown(low + step, system()) - unit.toShown(low, system()));
            numbers.setValue(unit.toShown(value, system()));
            JSpinner.NumberEditor editor = (JSpinner.NumberEditor) spinner.getEditor();
            editor.getFormat().applyPattern(pattern());
            JFormattedTextField field = editor.getTextField();
            field.setValue(spinner.getValue());
            field.setColumns(4);
            String symbol = unit.symbol(system());
            String name = other.text(textKey);
            label.setText(name + (symbol.isEmpty() ? "" : " (" + symbol + ")"));
            label.setLabelFor(spinner);
            slider.getAccessibleContext().setAccessibleName(other.text("knob.slider", name));
            field.getAccessibleContext().setAccessibleName(other.text("knob.number", name));
            spinner.getAccessibleContext().setAccessibleName(other.text("knob.number", name));
        } finally {
            showing = false;
        }
    }

    private String pattern() {
        int decimals = unit.decimals(system());
        return decimals == 0 ? "0" : "0." + "#".repeat(decimals);
    }

    /** Puts the label over its slider, so that the slider is long enough to be set by hand, and the number beside them. */
    void addTo(JPanel row, boolean ends) {
        row.add(label, "split 2, flowy, gapbottom 0");
        row.add(slider, "growx, wmin 24");
        row.add(spinner, ends ? "w 76!, wrap" : "w 76!");
    }
}
