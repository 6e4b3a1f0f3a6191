package io.github.weirwise.demo.window;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.ClockRow;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.demo.picture.UnitPicture;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JToggleButton;

/** The card that holds the unit's picture and its clock, or what a use shows in the picture's place. */
final class PictureCard extends Card {
    private static final long serialVersionUID = 1L;

    private final UnitPicture picture;
    private final Stack place = new Stack();
    private final JToggleButton names = new JToggleButton();

    PictureCard(UnitPicture picture, ClockRow clock, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill][]");
        this.picture = picture;
        names.setName("picture.names");
        names.setSelected(true);
        names.addActionListener(e -> picture.name(names.isSelected()));
        beside(names);
        place.hold(picture);
        body().add(place, "grow, push, wmin 0, hmin 0, wrap");
        body().add(clock, "growx");
    }

    /** Shows the picture, or something else in its place. */
    void show(Optional<JComponent> other) {
        names.setVisible(other.isEmpty());
        place.hold(other.orElse(picture));
    }

    void dress(String title, Dress dress) {
        head(title);
        Buttons.name(names, dress, "picture.names");
        paper(dress.palette());
    }
}
