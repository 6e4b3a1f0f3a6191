package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.ClockRow;
import io.github.weirwise.demo.picture.UnitPicture;

/** The card that holds the unit's picture and its clock. */
final class PictureCard extends Card {
    private static final long serialVersionUID = 1L;

    PictureCard(UnitPicture picture, ClockRow clock, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill][]");
        body().add(picture, "grow, push, wrap");
        body().add(clock, "growx");
    }

    void dress(String title, Dress dress) {
        head(title);
        paper(dress.palette());
    }
}
