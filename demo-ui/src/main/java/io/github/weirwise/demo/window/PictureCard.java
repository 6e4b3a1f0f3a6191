package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.ClockRow;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.demo.picture.UnitPicture;
import java.util.Optional;
import javax.swing.JComponent;

/** The card that holds the unit's picture and its clock, or what a use shows in the picture's place. */
final class PictureCard extends Card {
    private static final long serialVersionUID = 1L;

    private final UnitPicture picture;
    private final Stack place = new Stack();

    PictureCard(UnitPicture picture, ClockRow clock, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill][]");
        this.picture = picture;
        place.hold(picture);
        body().add(place, "grow, push, wmin 0, hmin 0, wrap");
        body().add(clock, "growx");
    }

    /** Shows the picture, or something else in its place. */
    void show(Optional<JComponent> other) {
        place.hold(other.orElse(picture));
    }

    void dress(String title, Dress dress) {
        head(title);
        paper(dress.palette());
    }
}
