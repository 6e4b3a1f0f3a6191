package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Desk;
import io.github.weirwise.demo.look.Clock;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.look.ObservationWords;
import io.github.weirwise.demo.tank.TrainingTank;
import io.github.weirwise.reading.Reading;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;

/** What was last seen at the unit, and the button to look again. */
public final class SeenCard extends Card {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Clock clock = new Clock(TrainingTank.START);
    private final Prose when = new Prose();
    private final Prose seen = new Prose();
    private final JButton look = new JButton();
    private transient Dress dress;

    /** The looks of a desk. */
    public SeenCard(Desk desk, Dress dress) {
        super(dress.palette(), "[grow,fill][]", "[]4[]");
        this.desk = desk;
        this.dress = dress;
        look.setName("look");
        look.addActionListener(e -> desk.look());
        body().add(when, "growx");
        body().add(look, "wrap");
        body().add(seen, "growx, span 2");
        dress(dress);
    }

    /** Shows the newest reading. */
    public void refresh() {
        Optional<Reading> last = desk.journal().last(Reading.class);
        when.setText(last.map(reading -> dress.words().say(clock.when(reading.at(), "seen.at")))
                .orElseGet(() -> dress.text("seen.never")));
        seen.setText(last.map(reading -> reading.observations().stream()
                        .map(each -> "\u2022 " + dress.words().say(ObservationWords.of(each)))
                        .collect(Collectors.joining("\n")))
                .orElse(""));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("seen.title"));
        paper(other.palette());
        Buttons.name(look, other, "seen.look");
        refresh();
    }
}
