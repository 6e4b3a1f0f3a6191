package io.github.weirwise.demo.start;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.MeasureBoxes;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.UnitChoice;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/**
 * A real unit, measured at the lines of its drawing, to begin its journal with. What is wrong is told at its box at once. A box
 * that stays empty takes its number from a unit like it, which stands in it in grey and is noted as assumed.
 */
public final class UnitForm extends JPanel {
    private static final long serialVersionUID = 1L;
    /**
     * What was filled in.
     *
     * @param assumed what was not known and taken from another unit, in words; empty when nothing was
     */
    public record Filled(SkimmerUnit unit, Settings settings, String assumed) {}

    private final JTextField name = new JTextField(20);
    private final Prose said = new Prose();
    private final transient MeasureBoxes<UnitMeasure> boxes;
    private final transient Dress dress;
    private transient SkimmerUnit base = LanternQuay.jetty();
    private transient Runnable typed = () -> {};

    /** An empty form. */
    public UnitForm(Dress dress) {
        super(new MigLayout("insets 10, gapx 10, fill, wrap 1", "[grow,fill]", "[][][][grow,fill][]"));
        this.dress = dress;
        Prose about = new Prose();
        about.setText(dress.text("form.about"));
        add(about, "wmin 0");
        JLabel nameLabel = new Caption();
        nameLabel.setText(dress.text("form.name"));
        nameLabel.setLabelFor(name);
        name.setName("unit.name");
        JPanel first = new JPanel(new MigLayout("insets 0, gapx 6, fillx", "[][grow,fill]", ""));
        first.add(nameLabel);
        first.add(name, "wmin 60, wrap");
        first.add(UnitChoice.bySize(this::like, dress), "span 2, wrap");
        add(first);
        said.setName("form.said");
        said.setForeground(dress.palette().danger());
        add(said, "wmin 0, hidemode 3");
        boxes = new MeasureBoxes<>(UnitMeasure.class, each -> each.of(base), numbers -> make("-", numbers), dress);
        add(new UnitDrawing(boxes, dress), "grow, push");
        JPanel others = new JPanel(new MigLayout("insets 0, gapx 8, fillx", "[sg,grow,fill]", "[bottom]"));
        Arrays.stream(UnitMeasure.values())
                .filter(each -> !each.isLength())
                .forEach(each -> others.add(boxes.make(each, true), "wmin 0"));
        add(others);
        boxes.named(name);
        boxes.onTyped(this::changed);
    }

    private UnitForm.Filled make(String called, ToDoubleFunction<UnitMeasure> numbers) {
        return new Filled(UnitMeasure.unit(called, numbers, base), UnitMeasure.settings(numbers), "");
    }

    private void changed() {
        said.setVisible(false);
        typed.run();
    }

    /** Numbers that are not known are taken from this unit; what was typed stays. */
    private void like(SkimmerUnit unit) {
        base = unit;
        boxes.check();
    }

    /** Calls this whenever something is typed. */
    public void onTyped(Runnable listener) {
        typed = listener;
    }

    /** What was typed, by the names of the boxes. */
    public Map<String, String> kept() {
        return boxes.kept();
    }

    /** Puts back what was typed. */
    public void again(Map<String, String> kept) {
        boxes.again(kept);
    }

    /** Goes to the first box that cannot be taken, or to the beginning. */
    public void goTo() {
        boxes.firstFault()
                .filter(box -> !name.getText().isBlank())
                .map(NumberBox::field)
                .orElse(name)
                .requestFocusInWindow();
    }

    /** Unit and settings as typed; empty when something cannot be taken, which is told then. */
    public Optional<Filled> filled() {
        boolean unnamed = name.getText().isBlank();
        if (unnamed || boxes.firstFault().isPresent()) {
            said.setText(dress.text(unnamed ? "form.unnamed" : boxes.faults() > 0 ? "form.faults" : "form.needed"));
            said.setVisible(true);
            revalidate();
            return Optional.empty();
        }
        Filled filled = make(name.getText().strip(), boxes.values());
        String assumed = boxes.assumedWords();
        return Optional.of(new Filled(
                filled.unit(),
                filled.settings(),
                assumed.isEmpty() ? "" : dress.text("form.assumedNote", base.name(), assumed)));
    }
}
