package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The measures of a real unit and how it is set now, to begin its journal with; what is wrong is told at its box. */
public final class UnitForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int WIDTH_PX = 740;

    /** How it is set now, besides what the unit is meant for. */
    private enum Now {
        CREST("weirCrestMm", Unit.MILLIMETRE),
        CELSIUS("waterCelsius", Unit.CELSIUS),
        SALINITY("practicalSalinity", Unit.SALINITY);

        private final String component;
        private final Unit unit;

        Now(String component, Unit unit) {
            this.component = component;
            this.unit = unit;
        }
    }

    /** What was filled in. */
    public record Filled(SkimmerUnit unit, Settings settings) {}

    private final JLabel nameLabel = new Caption();
    private final JTextField name = new JTextField(20);
    private final Prose about = new Prose();
    private final transient Map<UnitMeasure, FieldRow> measures = new EnumMap<>(UnitMeasure.class);
    private final transient Map<Now, FieldRow> now = new EnumMap<>(Now.class);
    private final transient Dress dress;
    private transient SkimmerUnit base;
    private transient Optional<FieldRow> firstFault = Optional.empty();

    /** A form filled with the numbers of the invented middle unit. */
    public UnitForm(Dress dress) {
        super(new MigLayout("insets 12, gapx 8", "[210,grow,fill][72!,fill][54!]16[190,grow,fill][72!,fill][54!]", ""));
        this.dress = dress;
        UnitChoice like = new UnitChoice(this::fill, dress);
        name.setName("unit.name");
        nameLabel.setLabelFor(name);
        nameLabel.setText(dress.text("form.name"));
        about.setText(dress.text("form.about"));
        about.setForeground(dress.palette().muted());
        add(about, "span 6, growx, wmin 0, wrap");
        add(like, "span 6, wrap");
        add(nameLabel);
        add(name, "span 5, growx, wrap");
        for (UnitMeasure measure : UnitMeasure.values()) {
            measures.put(measure, new FieldRow("form." + measure, measure.component(), measure.unit(), dress));
        }
        for (Now each : Now.values()) {
            now.put(each, new FieldRow("form." + each, each.component, each.unit, dress));
        }
        List<FieldRow> all = new ArrayList<>(measures.values());
        all.addAll(now.values());
        for (int i = 0; i < all.size(); i += 2) {
            FieldRow.pair(this, all.get(i), i + 1 < all.size() ? all.get(i + 1) : null);
        }
        fill(LanternQuay.jetty());
        // Names that wrap tell their height for a width, so there has to be one before the form is asked for its size.
        setSize(WIDTH_PX, WIDTH_PX);
    }

    private void fill(SkimmerUnit unit) {
        base = unit;
        measures.forEach((measure, row) -> row.show(measure.of(unit)));
        now.get(Now.CREST).show(unit.column().funnelBaseMm() - 10);
        now.get(Now.CELSIUS).show(25);
        now.get(Now.SALINITY).show(35);
    }

    /** Words and colours that it was made with. */
    public Dress dress() {
        return dress;
    }

    /** Goes to the first box that cannot be taken, or to the beginning. */
    public void goTo() {
        firstFault.ifPresentOrElse(FieldRow::goTo, name::requestFocusInWindow);
    }

    /** Unit and settings as typed; empty when something cannot be taken, which is told at its box then. */
    public Optional<Filled> filled() {
        FieldReader reader = new FieldReader(dress);
        Map<UnitMeasure, OptionalDouble> measured = new EnumMap<>(UnitMeasure.class);
        measures.forEach((measure, row) -> measured.put(measure, reader.number(row, false)));
        Map<Now, OptionalDouble> set = new EnumMap<>(Now.class);
        now.forEach((each, row) -> set.put(each, reader.number(row, false)));
        if (reader.faults().isEmpty()) {
            String called =
                    name.getText().isBlank() ? base.name() : name.getText().strip();
            Optional<SkimmerUnit> unit = reader.make(
                    measures.values(),
                    () -> UnitMeasure.unit(called, each -> measured.get(each).getAsDouble(), base));
            Collection<FieldRow> forSettings = new ArrayList<>(now.values());
            Optional<Settings> settings = reader.make(
                    forSettings,
                    () -> new Settings(
                            set.get(Now.CREST).getAsDouble(),
                            measured.get(UnitMeasure.FLOW).getAsDouble(),
                            measured.get(UnitMeasure.AIR).getAsDouble(),
                            set.get(Now.CELSIUS).getAsDouble(),
                            set.get(Now.SALINITY).getAsDouble(),
                            Condition.REFERENCE));
            if (unit.isPresent() && settings.isPresent()) {
                return Optional.of(new Filled(unit.get(), settings.get()));
            }
        }
        firstFault = reader.faults().stream().findFirst();
        revalidate();
        return Optional.empty();
    }
}
