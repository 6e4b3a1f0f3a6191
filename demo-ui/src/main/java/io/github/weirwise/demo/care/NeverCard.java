package io.github.weirwise.demo.care;

import io.github.weirwise.care.CareNever;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.Prose;
import io.github.weirwise.demo.panel.Sheet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JScrollPane;

/** What must never be done, always in sight while one sets up or cleans. */
final class NeverCard extends Card {
    private static final long serialVersionUID = 1L;

    private final Prose text = new Prose();

    NeverCard(Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        JScrollPane scroll = Sheet.around(text);
        body().add(scroll, "grow, h 100:120:150");
        dress(dress);
    }

    void dress(Dress other) {
        head(other.text("never.title"));
        paper(other.palette());
        text.setText(Stream.of(CareNever.values())
                .map(never -> "\u2022 " + other.words().say(never.words()))
                .collect(Collectors.joining("\n")));
        text.setCaretPosition(0);
    }
}
