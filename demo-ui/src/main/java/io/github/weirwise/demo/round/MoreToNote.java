package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.desk.Cannot;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Named;
import io.github.weirwise.demo.panel.NumberBox;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Unit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Rarer things to note: one more look, what was set by hand, something that happened. */
final class MoreToNote {
    private static final LookKind[] LOOKS = Stream.of(LookKind.values())
            .filter(look -> look.ordinal() > LookKind.FOAM_LOOK.ordinal())
            .toArray(LookKind[]::new);

    /** What a hand can set. */
    private enum Knob {
        WEIR,
        FLOW,
        AIR
    }

    private final Desk desk;
    private final JPanel part = new JPanel(new MigLayout("insets 0, gapx 6, hidemode 3", "[][grow,fill]", ""));
    private final JLabel lookName = new Caption();
    private final JComboBox<Named<LookKind>> look = new JComboBox<>();
    private final JPanel place = new JPanel(new MigLayout("insets 0"));
    private final JLabel setName = new Caption();
    private final JComboBox<Named<Knob>> set = new JComboBox<>();
    private final NumberBox crest;
    private final NumberBox litres;
    private final JLabel happeningName = new Caption();
    private final JComboBox<Named<Happening.Kind>> happening = new JComboBox<>();
    private Optional<LookKind> shown = Optional.empty();
    private Optional<Ask> ask = Optional.empty();
    private Runnable changed = () -> {};
    private Dress dress;

    MoreToNote(Desk desk, Dress dress) {
        this.desk = desk;
        this.dress = dress;
        crest = new NumberBox("more.crest", Unit.MILLIMETRE, dress);
        litres = new NumberBox("more.litres", Unit.LITRE_PER_HOUR, dress);
        look.setName("more.look");
        set.setName("more.set");
        happening.setName("more.happening");
        part.setOpaque(false);
        place.setOpaque(false);
        JPanel to = new JPanel(new MigLayout("insets 0, gapx 5, hidemode 3"));
        to.setOpaque(false);
        crest.addBoxTo(to, "");
        litres.addBoxTo(to, "");
        row(lookName, look);
        part.add(place, "skip, growx, wmin 0, wrap");
        row(setName, set);
        part.add(to, "skip, growx, wmin 0, wrap");
        row(happeningName, happening);
        look.addActionListener(e -> turn());
        set.addActionListener(e -> allow());
        dress(dress);
    }

    private void row(JLabel name, JComboBox<?> box) {
        name.setLabelFor(box);
        part.add(name);
        part.add(box, "wmin 60, wrap");
    }

    private void turn() {
        Optional<LookKind> picked = Named.picked(look);
        if (!picked.equals(shown)) {
            shown = picked;
            ask = picked.map(each -> Ask.of(each, dress));
            place.removeAll();
            ask.ifPresent(each -> {
                place.add(each.part());
                each.onChange(changed);
            });
            place.revalidate();
        }
    }

    private void allow() {
        Optional<Knob> picked = Named.picked(set);
        crest.show(picked.filter(Knob.WEIR::equals).isPresent());
        litres.show(picked.filter(each -> each != Knob.WEIR).isPresent());
        part.revalidate();
    }

    JComponent part() {
        return part;
    }

    void onChange(Runnable listener) {
        changed = listener;
    }

    /** One more look, if it was filled in. */
    Optional<Observation> seen(Faults faults) {
        return ask.flatMap(each -> each.seen(faults));
    }

    /** What was set and what happened; a look that could not be taken and was taken after all is asked for again. */
    List<JournalEntry> entries(Faults faults) {
        List<JournalEntry> entries = new ArrayList<>();
        Instant now = desk.now();
        boolean again = seen(faults).isPresent()
                && shown.filter(Cannot.in(desk.journal())::contains).isPresent();
        if (again) {
            entries.add(Cannot.again(now, shown.orElseThrow()));
        }
        Named.picked(happening).ifPresent(kind -> entries.add(new Happening(now, kind)));
        Named.picked(set).flatMap(knob -> setting(knob, now, faults)).ifPresent(entries::add);
        return entries;
    }

    private Optional<JournalEntry> setting(Knob knob, Instant now, Faults faults) {
        NumberBox box = knob == Knob.WEIR ? crest : litres;
        OptionalDouble typed = faults.number(box);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        double value = typed.getAsDouble();
        return faults.make(box, () -> switch (knob) {
            case WEIR -> new WeirMove(now, value, false);
            case FLOW -> new SettingChange(now, SettingChange.Knob.FLOW, value);
            case AIR -> new SettingChange(now, SettingChange.Knob.AIR, value);
        });
    }

    void clear() {
        look.setSelectedIndex(0);
        set.setSelectedIndex(0);
        happening.setSelectedIndex(0);
        crest.clear();
        litres.clear();
    }

    void dress(Dress other) {
        dress = other;
        lookName.setText(other.text("more.look"));
        setName.setText(other.text("more.set"));
        happeningName.setText(other.text("more.happening"));
        String nothing = other.text("more.nothing");
        Named.fill(look, LOOKS, nothing, each -> LookWords.name(each, other));
        Named.fill(set, Knob.values(), nothing, each -> other.text("more.set." + each));
        Named.fill(
                happening,
                Happening.Kind.values(),
                nothing,
                each -> other.words().say(EntryWords.happening(each)));
        crest.dress(other);
        litres.dress(other);
        ask.ifPresent(each -> each.dress(other));
        look.getAccessibleContext().setAccessibleName(other.text("more.look"));
        set.getAccessibleContext().setAccessibleName(other.text("more.set"));
        happening.getAccessibleContext().setAccessibleName(other.text("more.happening"));
        allow();
    }
}
