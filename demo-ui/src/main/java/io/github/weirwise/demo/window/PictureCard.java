package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.picture.UnitPicture;

/** The card that holds the unit's picture. */
final class PictureCard extends Card {
    private static final long serialVersionUID = 1L;

    PictureCard(UnitPicture picture, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        body().add(picture, "grow, push");
        dress(dress);
    }

    void dress(Dress dress) {
        head(dress.text("picture.title"));
        paper(dress.palette());
    }
}
