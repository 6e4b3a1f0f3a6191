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
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/**
 * A real unit, measured at the lines of its drawing, to begin its journal with. What is wrong is told at its box at once. A box
 * that stays empty takes its number from a unit like it, which stands in it in grey and is noted as assumed.
 */
public final class UnitForm extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final String NAME = "name";
    private static final List<UnitMeasure> LEFT = List.of(
            UnitMeasure.CUP,
            UnitMeasure.WANTED_AMOUNT,
            UnitMeasure.NECK_HEIGHT,
            UnitMeasure.FUNNEL_HEIGHT,
            UnitMeasure.WANTED_LEVEL,
            UnitMeasure.FUNNEL_BASE,
            UnitMeasure.BORE,
            UnitMeasure.AIR,
            UnitMeasure.OPENING);
    private static final List<UnitMeasure> RIGHT = List.of(
            UnitMeasure.NECK_BORE,
            UnitMeasure.WEIR_HIGH,
            UnitMeasure.CREST,
            UnitMeasure.WEIR_LOW,
            UnitMeasure.WEIR_WIDTH,
            UnitMeasure.FLOW,
            UnitMeasure.CELSIUS,
            UnitMeasure.SALINITY);

    /**
     * What was filled in.
     *
     * @param assumed what was not known and taken from another unit, in words; empty when nothing was
     */
    public record Filled(SkimmerUnit unit, Settings settings, String assumed) {}

    private final JTextField name = new JTextField(20);
    private final Prose said = new Prose();
    private final transient MeasureBoxes<UnitMeasure> boxes;
    private final UnitDrawing drawing;
    private final transient Dress dress;
    private transient SkimmerUnit base = LanternQuay.jetty();
    private transient Runnable typed = () -> {};

    /** An empty form. */
    public UnitForm(Dress dress) {
        super(new MigLayout(
                "insets 10, gapx 10, fill", "[192!,fill][260::,grow,fill][192!,fill]", "[][][][grow,fill]"));
        this.dress = dress;
        Prose about = new Prose();
        about.setText(dress.text("form.about"));
        add(about, "span 3, growx, wmin 0, wrap");
        JLabel nameLabel = new Caption();
        nameLabel.setText(dress.text("form.name"));
        nameLabel.setLabelFor(name);
        name.setName("unit.name");
        name.getDocument().addDocumentListener(onTyping());
        JPanel first = new JPanel(new MigLayout("insets 0, gapx 6, fillx", "[][grow,fill]", ""));
        first.add(nameLabel);
        first.add(name, "wmin 60, wrap");
        first.add(UnitChoice.bySize(this::like, dress), "span 2, wrap");
        add(first, "span 3, growx, wrap");
        said.setName("form.said");
        said.setForeground(dress.palette().danger());
        add(said, "span 3, growx, wmin 0, hidemode 3, wrap");
        boxes = new MeasureBoxes<>(UnitMeasure.class, each -> each.of(base), numbers -> make("-", numbers), dress);
        drawing = new UnitDrawing(dress, each -> boxes.box(each).field());
        add(column(LEFT), "aligny top");
        add(drawing, "grow");
        add(column(RIGHT), "aligny top");
        boxes.onTyped(this::changed);
    }

    private UnitForm.Filled make(String called, ToDoubleFunction<UnitMeasure> numbers) {
        return new Filled(UnitMeasure.unit(called, numbers, base), UnitMeasure.settings(numbers), "");
    }

    private DocumentListener onTyping() {
        return new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                changed();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                changed();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // A plain text has no attributes.
            }
        };
    }

    private JPanel column(List<UnitMeasure> measures) {
        JPanel column = new JPanel(new MigLayout("insets 0, gapy 0, wrap 1", "[192!,fill]", ""));
        for (UnitMeasure each : measures) {
            boxes.addTo(column, each, "growx, wmin 0, gapbottom 3");
            boxes.box(each).field().addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent e) {
                    drawing.point(Optional.of(each));
                }
            });
        }
        return column;
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
        Map<String, String> kept = new HashMap<>(boxes.kept());
        if (!name.getText().isBlank()) {
            kept.put(NAME, name.getText());
        }
        return kept;
    }

    /** Puts back what was typed. */
    public void again(Map<String, String> kept) {
        name.setText(kept.getOrDefault(NAME, ""));
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
