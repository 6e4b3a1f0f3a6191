package io.github.weirwise.demo.round;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is in the cup, since when, and whether it had run full. */
final class CupAsk implements Ask {
    private final NumberBox cup;
    private final NumberBox hours;
    private final JCheckBox full = new JCheckBox();
    private final JPanel part = new JPanel(new MigLayout("insets 0, gapx 5"));
    private OptionalDouble usualHours = OptionalDouble.empty();

    CupAsk(Dress dress) {
        cup = new NumberBox("ask.CUP_VOLUME", Unit.MILLILITRE, dress);
        hours = new NumberBox("ask.CUP_HOURS", Unit.HOUR, dress);
        full.setName("ask.CUP_FULL");
        full.setOpaque(false);
        part.setOpaque(false);
        cup.addBoxTo(part, "");
        hours.addTo(part, "");
        part.add(full, "h 26!");
        dress(dress);
    }

    /** The hours since the journal says that the cup was emptied; shown as long as no others are typed. */
    void since(OptionalDouble usual) {
        usualHours = usual;
        usual.ifPresent(each -> {
            if (hours.field().getText().isBlank()) {
                hours.show(each);
            }
        });
    }

    @Override
    public JComponent part() {
        return part;
    }

    @Override
    public JComponent first() {
        return cup.field();
    }

    @Override
    public Optional<Observation> seen(Faults faults) {
        OptionalDouble ml = faults.number(cup);
        OptionalDouble since = faults.number(hours);
        if (ml.isEmpty()) {
            if (full.isSelected() && cup.field().getText().isBlank()) {
                faults.missing(cup);
            }
            return Optional.empty();
        }
        if (since.isEmpty()) {
            if (hours.field().getText().isBlank()) {
                faults.missing(hours);
            }
            return Optional.empty();
        }
        Optional<Observation> amount = faults.make(cup, () -> new Observation.CupVolume(ml.getAsDouble(), 1, false));
        return amount.flatMap(right -> faults.make(
                hours, () -> new Observation.CupVolume(ml.getAsDouble(), since.getAsDouble(), full.isSelected())));
    }

    @Override
    public void clear() {
        cup.clear();
        hours.clear();
        full.setSelected(false);
        since(usualHours);
    }

    /** Hours alone are what the journal told, not what somebody typed. */
    @Override
    public String draft() {
        String typed = cup.field().getText();
        return typed.isBlank() && !full.isSelected()
                ? ""
                : typed + ";" + hours.field().getText() + ";" + full.isSelected();
    }

    @Override
    public void draft(String text) {
        String[] parts = text.split(";", -1);
        if (parts.length == 3) {
            cup.field().setText(parts[0]);
            hours.field().setText(parts[1]);
            full.setSelected(Boolean.parseBoolean(parts[2]));
        }
    }

    @Override
    public void onChange(Runnable listener) {
        cup.onChange(listener);
        hours.onChange(listener);
        full.addActionListener(e -> listener.run());
    }

    @Override
    public void dress(Dress dress) {
        cup.dress(dress);
        hours.dress(dress);
        full.setText(dress.text("ask.CUP_FULL"));
    }
}
