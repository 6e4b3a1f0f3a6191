package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Picks one of the invented units, by name or by the flow that it is made for. */
public final class UnitChoice extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Texts of the buttons, in the order of the units. */
    private static final List<String> NAMES =
            List.of("unit.seahorseRoom", "unit.jetty", "unit.pilchardRing", "unit.kelpHall");

    private final JLabel label = new Caption();
    private final List<JToggleButton> buttons = new ArrayList<>();
    private final boolean bySize;

    /** A choice by name that tells which unit was picked; the second one is picked at first. */
    public UnitChoice(Consumer<SkimmerUnit> picked, Dress dress) {
        this(picked, false, dress);
    }

    /** The same for whoever does not know these units. */
    public static UnitChoice bySize(Consumer<SkimmerUnit> picked, Dress dress) {
        return new UnitChoice(picked, true, dress);
    }

    private UnitChoice(Consumer<SkimmerUnit> picked, boolean bySize, Dress dress) {
        super(new MigLayout("insets 0, gapx 6"));
        this.bySize = bySize;
        setOpaque(false);
        add(label);
        Group group = new Group();
        for (SkimmerUnit unit : LanternQuay.units()) {
            JToggleButton button = new JToggleButton();
            button.setName("unit." + buttons.size());
            button.addActionListener(e -> picked.accept(unit));
            group.add(button);
            buttons.add(button);
            add(button);
        }
        buttons.get(1).setSelected(true);
        dress(dress);
    }

    /** Other words. */
    public void dress(Dress dress) {
        label.setText(dress.text(bySize ? "unit.flow" : "unit.label"));
        for (int i = 0; i < NAMES.size(); i++) {
            if (bySize) {
                double flow = LanternQuay.units().get(i).ratedFlowLitresPerHour();
                buttons.get(i).setText(dress.words().say(flow, Unit.LITRE_PER_HOUR));
            } else {
                Buttons.name(buttons.get(i), dress, NAMES.get(i));
            }
        }
    }
}
