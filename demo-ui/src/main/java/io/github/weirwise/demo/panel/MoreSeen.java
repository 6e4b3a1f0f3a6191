package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Rarer things to note: one more measure, a part that was looked at, something that happened. */
final class MoreSeen extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel measureName = new Caption();
    private final JComboBox<Named<Measure>> measure = new JComboBox<>();
    private final transient NumberBox number;
    private final JLabel partName = new Caption();
    private final JComboBox<Named<Part>> part = new JComboBox<>();
    private final JComboBox<Named<Finding>> finding = new JComboBox<>();
    private final JLabel happeningName = new Caption();
    private final JComboBox<Named<Happening.Kind>> happening = new JComboBox<>();
    private transient Dress dress;

    MoreSeen(Dress dress) {
        super(new MigLayout("insets 0, gapx 6, hidemode 3", "[][grow,fill][grow 30,fill]", ""));
        this.dress = dress;
        setOpaque(false);
        number = new NumberBox("more.value", Unit.PLAIN, dress);
        measure.setName("more.measure");
        part.setName("more.part");
        finding.setName("more.finding");
        happening.setName("more.happening");
        measureName.setLabelFor(measure);
        partName.setLabelFor(part);
        happeningName.setLabelFor(happening);
        JPanel value = new JPanel(new MigLayout("insets 0, gapx 4"));
        value.setOpaque(false);
        number.addTo(value, "");
        add(measureName);
        add(measure, "wmin 60");
        add(value, "wrap");
        add(partName);
        add(part, "wmin 60");
        add(finding, "wmin pref, wrap");
        add(happeningName);
        add(happening, "wmin 60, wrap");
        dress(dress);
    }

    /** What was picked and filled in. */
    List<Observation> observations() throws NumberBox.NotANumber {
        List<Observation> seen = new ArrayList<>();
        Optional<Measure> picked = Named.picked(measure);
        OptionalDouble value = number.value();
        if (picked.isPresent() && value.isPresent()) {
            seen.add(picked.get()
                    .observation(value.getAsDouble(), dress.words().book().units()));
        }
        Named.picked(part)
                .ifPresent(looked -> seen.add(
                        new Observation.Inspection(looked, Named.picked(finding).orElse(Finding.GOOD))));
        return seen;
    }

    Optional<Happening.Kind> happening() {
        return Named.picked(happening);
    }

    void clear() {
        measure.setSelectedIndex(0);
        number.clear();
        part.setSelectedIndex(0);
        finding.setSelectedIndex(0);
        happening.setSelectedIndex(0);
    }

    void dress(Dress other) {
        dress = other;
        measureName.setText(other.text("more.measure"));
        partName.setText(other.text("more.part"));
        happeningName.setText(other.text("more.happening"));
        String nothing = other.text("more.nothing");
        Named.fill(measure, Measure.values(), nothing, each -> each.label(other));
        Named.fill(part, Part.values(), nothing, each -> other.words().say(EntryWords.part(each)));
        Named.fill(finding, Finding.values(), null, each -> other.words().say(EntryWords.finding(each)));
        Named.fill(
                happening,
                Happening.Kind.values(),
                nothing,
                each -> other.words().say(EntryWords.happening(each)));
        number.dress(other);
        measure.getAccessibleContext().setAccessibleName(other.text("more.measure"));
        part.getAccessibleContext().setAccessibleName(other.text("more.part"));
        finding.getAccessibleContext().setAccessibleName(other.text("more.finding"));
        happening.getAccessibleContext().setAccessibleName(other.text("more.happening"));
    }
}
