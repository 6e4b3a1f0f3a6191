package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.practice.Act;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is to be done: the weir by so much, a part, air or water. Only what the scenario offers can be picked. */
final class ActForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel kindName = new Caption();
    private final JComboBox<Named<Act.Kind>> kind = new JComboBox<>();
    private final JComboBox<Named<Part>> part = new JComboBox<>();
    private final transient NumberBox byMm;
    private final transient NumberBox litres;
    private final JPanel mmRow = row();
    private final JPanel litresRow = row();
    private transient Act.Kind[] kinds = Act.Kind.values();
    private transient Part[] parts = Part.values();
    private transient Dress dress;

    ActForm(Dress dress) {
        super(new MigLayout("insets 0, gapx 8, hidemode 3", "[][grow,fill]", ""));
        this.dress = dress;
        setOpaque(false);
        byMm = new NumberBox("act.by", Unit.MILLIMETRE, dress);
        litres = new NumberBox("act.litres", Unit.LITRE_PER_HOUR, dress);
        kind.setName("act.kind");
        part.setName("act.part");
        kindName.setLabelFor(kind);
        kind.addActionListener(e -> unfold());
        byMm.addTo(mmRow, "");
        litres.addTo(litresRow, "");
        add(kindName);
        add(kind, "wmin 60, wrap");
        add(part, "skip, wmin 60, wrap");
        add(mmRow, "skip, wrap");
        add(litresRow, "skip, wrap");
        byMm.show(2);
        dress(dress);
    }

    private static JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, gapx 5"));
        row.setOpaque(false);
        return row;
    }

    private void unfold() {
        Optional<Act.Kind> picked = Named.picked(kind);
        part.setVisible(picked.filter(each -> each == Act.Kind.SERVICE).isPresent());
        mmRow.setVisible(picked.filter(each -> each == Act.Kind.MOVE_WEIR).isPresent());
        litresRow.setVisible(picked.filter(each -> each == Act.Kind.SET_FLOW || each == Act.Kind.SET_AIR)
                .isPresent());
        revalidate();
    }

    /** Offers what a scenario offers. */
    void offer(Scenario scenario) {
        Act.Kind[] offered = Stream.of(Act.Kind.values())
                .filter(each -> scenario.offers().acts().isEmpty()
                        || scenario.offers().acts().containsKey(each))
                .toArray(Act.Kind[]::new);
        Part[] served = Stream.of(Part.values())
                .filter(each -> scenario.offers().services().isEmpty()
                        || scenario.offers().services().containsKey(each))
                .toArray(Part[]::new);
        if (!java.util.Arrays.equals(offered, kinds) || !java.util.Arrays.equals(served, parts)) {
            kinds = offered;
            parts = served;
            dress(dress);
        }
    }

    /** Fills in a move of the weir. */
    void plan(double moveMm) {
        for (int i = 0; i < kinds.length; i++) {
            if (kinds[i] == Act.Kind.MOVE_WEIR) {
                kind.setSelectedIndex(i);
                byMm.show(moveMm);
            }
        }
    }

    /**
     * The act as filled in; empty when its number is missing.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if its number cannot be
     */
    Optional<Act> act() {
        return Named.picked(kind).flatMap(picked -> switch (picked) {
            case MOVE_WEIR -> number(byMm).map(Act.MoveWeir::new);
            case SERVICE -> Named.picked(part).map(Act.ServicePart::new);
            case STOP_AIR -> Optional.of(new Act.StopAir());
            case START_AIR -> Optional.of(new Act.StartAir());
            case SET_FLOW -> number(litres).map(Act.SetFlow::new);
            case SET_AIR -> number(litres).map(Act.SetAir::new);
            case TAKE_OUT_FOOD -> Optional.of(new Act.TakeOutFood());
        });
    }

    private static Optional<Double> number(NumberBox box) {
        try {
            OptionalDouble value = box.value();
            return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
        } catch (NumberBox.NotANumber e) {
            return Optional.empty();
        }
    }

    void dress(Dress other) {
        dress = other;
        kindName.setText(other.text("act.kind"));
        Named.fill(kind, kinds, null, each -> other.words().say(each.words()));
        Named.fill(part, parts, null, each -> other.words().say(EntryWords.part(each)));
        kind.getAccessibleContext().setAccessibleName(other.text("act.kind"));
        part.getAccessibleContext().setAccessibleName(other.text("act.part"));
        byMm.dress(other);
        litres.dress(other);
        unfold();
    }
}
