package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.desk.TankDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Caption;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Standing;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import java.awt.BorderLayout;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;

/** What is read on every visit, each with its last value beside it; all of it or a part, and more when asked. */
final class ReadCard extends Card {
    private static final long serialVersionUID = 1L;
    /** What is asked on every visit. */
    static final List<LookKind> USUAL =
            List.of(LookKind.FUNNEL_LEVEL, LookKind.CUP_VOLUME, LookKind.DARKNESS, LookKind.FOAM_LOOK);

    private final transient Desk desk;
    private final transient Map<LookKind, Ask> asks = new EnumMap<>(LookKind.class);
    private final transient Map<LookKind, JLabel> names = new EnumMap<>(LookKind.class);
    private final transient Map<LookKind, Prose> last = new EnumMap<>(LookKind.class);
    private final JPanel moreAt = new JPanel(new BorderLayout());
    private transient Optional<MoreToNote> more = Optional.empty();
    private final JToggleButton unfold = new JToggleButton();
    private final JButton look = new JButton();
    private final JButton note = new JButton();
    private final Prose said = new Prose();
    private final transient Runnable goOn;
    private transient Runnable typed = () -> {};
    private transient Dress dress;

    /**
     * A card that asks.
     *
     * @param asks what is asked, made before, since each takes its time
     * @param goOn done when what was typed is noted, or when there is nothing to note
     */
    ReadCard(Desk desk, Map<LookKind, Ask> asks, Runnable goOn, Dress dress) {
        super(dress.palette(), "[]8[grow,fill]", "");
        this.desk = desk;
        this.goOn = goOn;
        this.dress = dress;
        for (LookKind each : USUAL) {
            names.put(each, new Caption());
            last.put(each, new Prose());
        }
        this.asks.putAll(asks);
        put();
        say("");
        name(dress);
    }

    private void put() {
        said.setName("read.said");
        body().add(said, "span 2, growx, wmin 0, wrap");
        for (LookKind each : USUAL) {
            body().add(names.get(each), "aligny top, gaptop 5");
            body().add(asks.get(each).part(), "wmin 0, wrap");
            body().add(last.get(each), "skip, growx, wmin 0, wrap");
            names.get(each).setLabelFor(asks.get(each).first());
            last.get(each).setName("last." + each);
            asks.get(each).onChange(this::changed);
        }
        moreAt.setOpaque(false);
        moreAt.setVisible(false);
        body().add(moreAt, "span 2, growx, wmin 0, wrap");
        body().add(Buttons.row(note, look, unfold), "span 2, growx");
        Buttons.set(unfold, "read.more", this::unfold);
        Buttons.set(note, "read.note", this::noteIt);
        look.setVisible(desk instanceof TankDesk);
        Buttons.set(look, "read.simulate", this::simulate);
    }

    private void unfold() {
        if (more.isEmpty()) {
            MoreToNote made = new MoreToNote(desk, dress);
            made.onChange(() -> typed.run());
            moreAt.add(made.part());
            more = Optional.of(made);
        }
        moreAt.setVisible(unfold.isSelected());
        revalidate();
    }

    private void simulate() {
        if (desk instanceof TankDesk tank) {
            Reading seen = tank.look();
            clear();
            confirm(seen);
        }
    }

    private void changed() {
        say("");
        typed.run();
    }

    /** Calls this whenever something is typed or picked. */
    void onTyped(Runnable listener) {
        typed = listener;
    }

    /** What stands in the boxes and can be taken, without a word about what cannot. */
    List<Observation> draft() {
        Faults quiet = new Faults(dress);
        return asks.values().stream()
                .map(ask -> ask.seen(quiet))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What stands in the boxes, by their names. */
    Map<String, String> kept() {
        Map<String, String> kept = asks.entrySet().stream()
                .filter(each -> !each.getValue().draft().isBlank())
                .collect(Collectors.toMap(
                        each -> each.getKey().name(), each -> each.getValue().draft()));
        return kept;
    }

    /** Puts back what was left in the boxes. */
    void again(Map<String, String> kept) {
        asks.forEach((look, ask) -> Optional.ofNullable(kept.get(look.name())).ifPresent(ask::draft));
        if (!kept.isEmpty()) {
            say(dress.text("read.again"));
        }
        typed.run();
    }

    /** Notes what was typed and goes on; what cannot be taken is told, and nothing is noted then. */
    void noteIt() {
        Faults faults = new Faults(dress);
        List<Observation> seen = new ArrayList<>();
        asks.values().forEach(ask -> ask.seen(faults).ifPresent(seen::add));
        more.flatMap(each -> each.seen(faults)).ifPresent(seen::add);
        List<JournalEntry> entries =
                new ArrayList<>(more.map(each -> each.entries(faults)).orElse(List.of()));
        if (!faults.none()) {
            say(faults.words());
            said.setForeground(dress.palette().danger());
            faults.goTo();
            return;
        }
        if (!seen.isEmpty()) {
            entries.add(new Reading(desk.now(), "", seen));
        }
        if (entries.isEmpty()) {
            goOn.run();
            return;
        }
        // What is typed stays until it is noted, so that it need not be typed twice.
        desk.note(entries, () -> {
            clear();
            entries.forEach(this::confirm);
            goOn.run();
        });
    }

    private void confirm(JournalEntry entry) {
        if (entry instanceof Reading reading) {
            say(dress.text(
                    "read.noted",
                    reading.observations().stream()
                            .map(ObservationWords::of)
                            .map(dress.words()::say)
                            .collect(Collectors.joining("; "))));
        } else if (said.getText().isEmpty()) {
            say(dress.text("read.notedMore"));
        }
    }

    private void clear() {
        asks.values().forEach(Ask::clear);
        more.ifPresent(MoreToNote::clear);
        changed();
        refresh();
    }

    /** What was noted last, in one line. */
    String summary() {
        return said.getText();
    }

    private void say(String text) {
        said.setText(text);
        said.setForeground(dress.palette().ink());
        said.setVisible(!text.isEmpty());
        note.getAccessibleContext().setAccessibleDescription(text);
        revalidate();
    }

    /** Shows the last values and their age. */
    void refresh() {
        last(LookKind.FUNNEL_LEVEL, desk.newest(Observation.FunnelLevel.class));
        last(LookKind.CUP_VOLUME, desk.newest(Observation.CupVolume.class));
        last(LookKind.DARKNESS, desk.newestColour());
        last(LookKind.FOAM_LOOK, desk.newest(Observation.FoamLook.class));
        ((CupAsk) asks.get(LookKind.CUP_VOLUME)).since(emptied());
    }

    private void last(LookKind look, Optional<? extends Desk.Seen<?>> newest) {
        String words = newest.map(seen ->
                        dress.text("read.last", ObservationWords.of(seen.what()), Ages.since(seen.at(), desk.now())))
                .orElseGet(() -> dress.text("read.never"));
        last.get(look).setText(words);
        asks.get(look).first().getAccessibleContext().setAccessibleDescription(words);
    }

    /** Hours since the cup was read last, when it was emptied too. */
    private OptionalDouble emptied() {
        return desk.newest(Observation.CupVolume.class)
                .map(seen -> Duration.between(seen.at(), desk.now()).toMinutes() / 60.0)
                .filter(hours -> hours >= 1)
                .map(hours -> OptionalDouble.of(Math.rint(hours * 10) / 10))
                .orElseGet(OptionalDouble::empty);
    }

    /** Goes to the first box. */
    void goTo() {
        asks.get(LookKind.FUNNEL_LEVEL).first().requestFocusInWindow();
    }

    private void name(Dress other) {
        dress = other;
        head(other.text("read.title"));
        paper(other.palette());
        names.forEach((look, name) -> name.setText(other.text("ask." + look)));
        last.values().forEach(text -> {
            text.setFont(Standing.WANTED.font(UIManager.getFont("Label.font")));
            text.setForeground(other.palette().muted());
        });
        Buttons.name(other, look, unfold, note);
        refresh();
    }

    /** Other words or colours. */
    void dress(Dress other) {
        asks.values().forEach(ask -> ask.dress(other));
        more.ifPresent(each -> each.dress(other));
        name(other);
    }
}
