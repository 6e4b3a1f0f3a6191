package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.strip.DaysStrip;

/** The card that holds the strip of the last days. */
final class StripCard extends Card {
    private static final long serialVersionUID = 1L;

    StripCard(DaysStrip strip, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        body().add(strip, "grow, push");
        dress(dress);
    }

    void dress(Dress dress) {
        head(dress.text("strip.title"));
        paper(dress.palette());
    }
}
