package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** Picks one of the three invented units. */
public final class UnitChoice extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Texts of the buttons, in the order of the units. */
    private static final List<String> NAMES =
            List.of("unit.seahorseRoom", "unit.jetty", "unit.pilchardRing", "unit.kelpHall");

    private final JLabel label = new Caption();
    private final List<JToggleButton> buttons = new ArrayList<>();

    /** A choice that tells which unit was picked; the second one is picked at first. */
    public UnitChoice(Consumer<SkimmerUnit> picked, Dress dress) {
        super(new MigLayout("insets 0, gapx 6"));
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
        label.setText(dress.text("unit.label"));
        for (int i = 0; i < NAMES.size(); i++) {
            Buttons.name(buttons.get(i), dress, NAMES.get(i));
        }
    }
}
