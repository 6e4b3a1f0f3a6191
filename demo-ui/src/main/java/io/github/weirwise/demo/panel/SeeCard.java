package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.EntryWords;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** What a person sees at the unit: ruler, cup, darkness by swatches, foam by pictures, and more when asked. */
public final class SeeCard extends Card {
    private static final long serialVersionUID = 1L;
    private static final float SMALL = 11f;
    /** Even steps on a logarithmic scale, from tank water to sludge. */
    private static final List<Double> SWATCHES_PT_CO = List.of(30.0, 150.0, 450.0, 1000.0, 2000.0, 4500.0, 12000.0);

    private final transient Desk desk;
    private final transient NumberBox level;
    private final transient NumberBox cup;
    private final transient NumberBox hours;
    private final JCheckBox full = new JCheckBox();
    private final JLabel darknessName = new Caption();
    private final transient Choice<Double> darkness = new Choice<>("see.darkness", SWATCHES_PT_CO);
    private final JLabel foamName = new Caption();
    private final transient Choice<FoamLookWord> foam = new Choice<>("see.foam", List.of(FoamLookWord.values()));
    private final MoreSeen more;
    private final JToggleButton unfold = new JToggleButton();
    private final JButton look = new JButton();
    private final JButton note = new JButton();
    private final Prose said = new Prose();
    private transient Dress dress;

    /** The form of a desk. */
    public SeeCard(Desk desk, Dress dress) {
        super(dress.palette(), "[]8[grow,fill]", "");
        this.desk = desk;
        this.dress = dress;
        level = new NumberBox("see.level", Unit.MILLIMETRE, dress);
        cup = new NumberBox("see.cup", Unit.MILLILITRE, dress);
        hours = new NumberBox("see.hours", Unit.HOUR, dress);
        more = new MoreSeen(dress);
        nameParts();
        put();
        dress(dress);
    }

    private void nameParts() {
        unfold.setName("see.more");
        look.setName("see.look");
        note.setName("see.note");
        said.setName("see.said");
        full.setName("see.full");
        full.setOpaque(false);
        unfold.addActionListener(e -> {
            more.setVisible(unfold.isSelected());
            revalidate();
        });
        note.addActionListener(e -> noteIt());
        if (desk instanceof TankDesk tank) {
            look.addActionListener(e -> {
                Reading seen = tank.look();
                clear();
                say(dress.text(
                        "see.seen",
                        seen.observations().stream()
                                .map(ObservationWords::of)
                                .map(dress.words()::say)
                                .collect(Collectors.joining("; "))));
            });
            beside(look);
        }
        beside(unfold);
        beside(note);
    }

    private void put() {
        JPanel measures = new JPanel(new MigLayout("insets 0, gapx 5, nogrid"));
        measures.setOpaque(false);
        level.addTo(measures, "gapright 10");
        cup.addTo(measures, "");
        hours.addTo(measures, "gapright 10");
        measures.add(full, "h 26!");
        body().add(measures, "span 2, growx, wrap");
        body().add(darknessName);
        body().add(darkness.row(), "wrap");
        body().add(foamName);
        body().add(foam.row(), "wrap");
        more.setVisible(false);
        body().add(more, "span 2, growx, wrap");
        body().add(said, "span 2, growx");
    }

    private void noteIt() {
        try {
            List<Observation> seen = gather();
            seen.addAll(more.observations());
            List<JournalEntry> entries = new ArrayList<>();
            more.happening().ifPresent(kind -> entries.add(new Happening(desk.now(), kind)));
            if (!seen.isEmpty()) {
                entries.add(new Reading(desk.now(), "", seen));
            }
            if (entries.isEmpty()) {
                say(dress.text("see.nothing"));
            } else {
                // What is typed stays until it is noted, so that it need not be typed twice.
                desk.note(entries, () -> {
                    clear();
                    more.clear();
                });
            }
        } catch (NumberBox.NotANumber e) {
            say(dress.text("see.notANumber", e.typed()));
        } catch (OutOfRangeException e) {
            said.setText(dress.text(
                    "see.outOfRange",
                    dress.words().book().typed(e.value(), Unit.PLAIN),
                    dress.words().book().typed(e.limits().low(), Unit.PLAIN),
                    dress.words().book().typed(e.limits().high(), Unit.PLAIN)));
        }
    }

    private List<Observation> gather() throws NumberBox.NotANumber {
        List<Observation> seen = new ArrayList<>();
        level.value().ifPresent(mm -> seen.add(new Observation.FunnelLevel(mm)));
        OptionalDouble ml = cup.value();
        OptionalDouble since = hours.value();
        if (ml.isPresent() != since.isPresent()) {
            NumberBox lacking = ml.isPresent() ? hours : cup;
            lacking.mark(true);
            throw new NumberBox.NotANumber("");
        }
        if (ml.isPresent()) {
            seen.add(new Observation.CupVolume(ml.getAsDouble(), since.getAsDouble(), full.isSelected()));
        }
        darkness.picked().ifPresent(ptCo -> seen.add(new Observation.DarknessMatch(ptCo)));
        foam.picked().ifPresent(word -> seen.add(new Observation.FoamLook(word)));
        return seen;
    }

    private void clear() {
        level.clear();
        cup.clear();
        hours.clear();
        full.setSelected(false);
        darkness.clear();
        foam.clear();
        refresh();
    }

    /** A form has nothing to show again but that what was said about it is over. */
    public void refresh() {
        say("");
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        revalidate();
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("see.title"));
        paper(other.palette());
        level.dress(other);
        cup.dress(other);
        hours.dress(other);
        more.dress(other);
        full.setText(other.text("see.full"));
        darknessName.setText(other.text("see.darkness"));
        foamName.setText(other.text("see.foam"));
        darkness.show(
                ptCo -> new PaintedOnce(new SwatchIcon(ptCo, other.palette())),
                ptCo -> other.words().book().number(ptCo, Unit.PLATINUM_COBALT),
                ptCo -> other.text("see.swatch", EntryWords.darkness(ptCo), Quantity.of(ptCo, Unit.PLATINUM_COBALT)),
                SMALL);
        foam.show(
                word -> new PaintedOnce(new FoamIcon(word, other.palette())),
                word -> other.text("foam.short." + word),
                word -> other.words().say(EntryWords.foam(word)),
                SMALL);
        Buttons.name(look, other, "see.look");
        Buttons.name(unfold, other, "see.more");
        Buttons.name(note, other, "see.note");
        refresh();
    }
}
