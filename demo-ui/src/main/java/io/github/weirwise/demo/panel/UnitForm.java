package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.skimmer.Column;
import io.github.weirwise.skimmer.Condition;
import io.github.weirwise.skimmer.LanternQuay;
import io.github.weirwise.skimmer.Settings;
import io.github.weirwise.skimmer.SkimmerUnit;
import io.github.weirwise.skimmer.Target;
import io.github.weirwise.skimmer.Weir;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The measures of a real unit and how it is set now, to begin its journal with. */
public final class UnitForm extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What is measured or known of a unit. */
    private enum Field {
        BORE(Unit.MILLIMETRE),
        OPENING(Unit.MILLIMETRE),
        FUNNEL_BASE(Unit.MILLIMETRE),
        FUNNEL_HEIGHT(Unit.MILLIMETRE),
        NECK_BORE(Unit.MILLIMETRE),
        NECK_HEIGHT(Unit.MILLIMETRE),
        WEIR_WIDTH(Unit.MILLIMETRE),
        WEIR_LOW(Unit.MILLIMETRE),
        WEIR_HIGH(Unit.MILLIMETRE),
        CUP(Unit.MILLILITRE),
        WANTED_LEVEL(Unit.MILLIMETRE),
        WANTED_AMOUNT(Unit.MILLILITRE_PER_DAY),
        CREST(Unit.MILLIMETRE),
        FLOW(Unit.LITRE_PER_HOUR),
        AIR(Unit.LITRE_PER_HOUR),
        CELSIUS(Unit.CELSIUS),
        SALINITY(Unit.SALINITY);

        private final Unit unit;

        Field(Unit unit) {
            this.unit = unit;
        }
    }

    private final UnitChoice like;
    private final JLabel nameLabel = new Caption();
    private final JTextField name = new JTextField(20);
    private final transient Map<Field, NumberBox> boxes = new EnumMap<>(Field.class);
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
        for (Field field : Field.values()) {
            NumberBox box = new NumberBox("form." + field, field.unit, dress);
            boxes.put(field, box);
            place++;
            box.addTo(this, place % 2 == 0 ? "wrap" : "");
        }
        fill(LanternQuay.middle());
        name.setText("");
    }

    private void fill(SkimmerUnit unit) {
        base = unit;
        Column column = unit.column();
        show(Field.BORE, column.boreMm());
        show(Field.OPENING, column.openingMm());
        show(Field.FUNNEL_BASE, column.funnelBaseMm());
        show(Field.FUNNEL_HEIGHT, column.funnelHeightMm());
        show(Field.NECK_BORE, column.neckBoreMm());
        show(Field.NECK_HEIGHT, column.neckHeightMm());
        show(Field.WEIR_WIDTH, unit.weir().widthMm());
        show(Field.WEIR_LOW, unit.weir().lowestCrestMm());
        show(Field.WEIR_HIGH, unit.weir().highestCrestMm());
        show(Field.CUP, unit.cupMl());
        show(Field.WANTED_LEVEL, unit.target().submergenceMm());
        show(Field.WANTED_AMOUNT, unit.target().skimmateMlPerDay());
        show(Field.CREST, column.funnelBaseMm() - 10);
        show(Field.FLOW, unit.ratedFlowLitresPerHour());
        show(Field.AIR, unit.ratedAirLitresPerHour());
        show(Field.CELSIUS, 25);
        show(Field.SALINITY, 35);
    }

    private void show(Field field, double value) {
        boxes.get(field).show(value);
    }

    private double number(Field field) throws NotFilled {
        try {
            return boxes.get(field).value().orElseThrow(() -> new NotFilled(boxes.get(field)));
        } catch (NumberBox.NotANumber e) {
            throw new NotFilled(boxes.get(field));
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
        Column column = new Column(
                number(Field.BORE),
                number(Field.OPENING),
                number(Field.FUNNEL_BASE),
                number(Field.FUNNEL_HEIGHT),
                number(Field.NECK_BORE),
                number(Field.NECK_HEIGHT));
        double width = number(Field.WEIR_WIDTH);
        Weir weir = new Weir(width, width, number(Field.WEIR_LOW), number(Field.WEIR_HIGH));
        Target target = new Target(
                number(Field.WANTED_LEVEL),
                number(Field.WANTED_AMOUNT),
                base.target().darknessPtCo());
        String called = name.getText().isBlank() ? base.name() : name.getText().strip();
        return new SkimmerUnit(
                called,
                1,
                column,
                weir,
                number(Field.CUP),
                number(Field.FLOW),
                number(Field.AIR),
                base.traits(),
                target);
    }

    /**
     * How it is set now.
     *
     * @throws NotFilled if a number is missing
     * @throws io.github.weirwise.report.OutOfRangeException if a number cannot be
     */
    public Settings settings() throws NotFilled {
        return new Settings(
                number(Field.CREST),
                number(Field.FLOW),
                number(Field.AIR),
                number(Field.CELSIUS),
                number(Field.SALINITY),
                Condition.REFERENCE);
    }
}
