package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.reading.Observation;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A look that is one number. */
final class NumberAsk implements Ask {
    private final Numbered kind;
    private final NumberBox box;
    private final JPanel part = new JPanel(new MigLayout("insets 0, gapx 5"));

    NumberAsk(String name, Numbered kind, Dress dress) {
        this.kind = kind;
        box = new NumberBox("ask." + name, kind.unit(), dress);
        part.setOpaque(false);
        box.addBoxTo(part, "");
    }

    @Override
    public JComponent part() {
        return part;
    }

    @Override
    public JComponent first() {
        return box.field();
    }

    @Override
    public Optional<Observation> seen(Faults faults) {
        OptionalDouble typed = faults.number(box);
        return typed.isPresent() ? faults.make(box, () -> kind.make().apply(typed.getAsDouble())) : Optional.empty();
    }

    @Override
    public void clear() {
        box.clear();
    }

    @Override
    public String draft() {
        return box.field().getText();
    }

    @Override
    public void draft(String text) {
        box.field().setText(text);
    }

    @Override
    public void onChange(Runnable listener) {
        box.onChange(listener);
    }

    @Override
    public void dress(Dress dress) {
        box.dress(dress);
    }
}
