package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.skimmer.Condition;
import io.github.weirwise.skimmer.LanternQuay;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The measures of a real unit and how it is set now, to begin its journal with. */
public final class UnitForm extends JPanel {
    private static final long serialVersionUID = 1L;

    /** How it is set now, besides what the unit is meant for. */
    private enum Now {
        CREST(Unit.MILLIMETRE),
        CELSIUS(Unit.CELSIUS),
        SALINITY(Unit.SALINITY);

        private final Unit unit;

        Now(Unit unit) {
            this.unit = unit;
        }
    }

    private final UnitChoice like;
    private final JLabel nameLabel = new Caption();
    private final JTextField name = new JTextField(20);
    private final transient Map<UnitMeasure, NumberBox> boxes = new EnumMap<>(UnitMeasure.class);
    private final transient Map<Now, NumberBox> now = new EnumMap<>(Now.class);
    private transient SkimmerUnit base;

    /** A form filled with the numbers of the invented middle unit. */
    public UnitForm(Dress dress) {
        super(new MigLayout("insets 12, wrap 6, gapx 8", "[][][]24[][][]", ""));
        like = new UnitChoice(this::fill, dress);
        name.setName("unit.name");
        nameLabel.setLabelFor(name);
        nameLabel.setText(dress.text("form.name"));
        add(like, "span 6");
        add(nameLabel);
        add(name, "span 5, growx");
        int place = 0;
        for (UnitMeasure measure : UnitMeasure.values()) {
            NumberBox box = new NumberBox("form." + measure, measure.unit(), dress);
            boxes.put(measure, box);
            place++;
            box.addTo(this, place % 2 == 0 ? "wrap" : "");
        }
        for (Now field : Now.values()) {
            NumberBox box = new NumberBox("form." + field, field.unit, dress);
            now.put(field, box);
            place++;
            box.addTo(this, place % 2 == 0 ? "wrap" : "");
        }
        fill(LanternQuay.middle());
        name.setText("");
    }

    private void fill(SkimmerUnit unit) {
        base = unit;
        boxes.forEach((measure, box) -> box.show(measure.of(unit)));
        now.get(Now.CREST).show(unit.column().funnelBaseMm() - 10);
        now.get(Now.CELSIUS).show(25);
        now.get(Now.SALINITY).show(35);
    }

    private static double number(NumberBox box) throws NotFilled {
        try {
            return box.value().orElseThrow(() -> new NotFilled(box));
        } catch (NumberBox.NotANumber e) {
            throw new NotFilled(box);
        }
    }

    /** A number is missing; its box is marked. */
    public static final class NotFilled extends Exception {
        private static final long serialVersionUID = 1L;

        NotFilled(NumberBox box) {
            super(box.field().getName());
            box.mark(true);
            box.field().requestFocusInWindow();
        }
    }

    /**
     * The unit as described.
     *
     * @throws NotFilled if a number is missing
     * @throws io.github.weirwise.report.OutOfRangeException if a number cannot be
     */
    public SkimmerUnit unit() throws NotFilled {
        Map<UnitMeasure, Double> numbers = new EnumMap<>(UnitMeasure.class);
        for (Map.Entry<UnitMeasure, NumberBox> each : boxes.entrySet()) {
            numbers.put(each.getKey(), number(each.getValue()));
        }
        String called = name.getText().isBlank() ? base.name() : name.getText().strip();
        return UnitMeasure.unit(called, numbers::get, base);
    }

    /**
     * How it is set now.
     *
     * @throws NotFilled if a number is missing
     * @throws io.github.weirwise.report.OutOfRangeException if a number cannot be
     */
    public Settings settings() throws NotFilled {
        return new Settings(
                number(now.get(Now.CREST)),
                number(boxes.get(UnitMeasure.FLOW)),
                number(boxes.get(UnitMeasure.AIR)),
                number(now.get(Now.CELSIUS)),
                number(now.get(Now.SALINITY)),
                Condition.REFERENCE);
    }
}
