package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Buttons;
import io.github.weirwise.demo.panel.Card;
import io.github.weirwise.demo.panel.ClockRow;
import io.github.weirwise.demo.panel.Stack;
import io.github.weirwise.demo.picture.UnitPicture;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import javax.swing.JToggleButton;

/** The card that holds the unit's picture and its clock, made when they are first wanted, or what a use shows in their place. */
final class PictureCard extends Card {
    private static final long serialVersionUID = 1L;

    private final Stack place = new Stack();
    private final JToggleButton names = new JToggleButton();
    private final transient DoubleConsumer weirMoved;
    private final transient Motion motion = new Motion();
    private transient Optional<UnitPicture> picture = Optional.empty();
    private transient Optional<ClockRow> clock = Optional.empty();
    private transient Dress dress;

    /** @param weirMoved gets the crest, mm, that the weir is moved to in the picture */
    PictureCard(DoubleConsumer weirMoved, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill][]");
        this.weirMoved = weirMoved;
        this.dress = dress;
        names.setSelected(true);
        Buttons.set(names, "picture.names", () -> picture.ifPresent(each -> each.name(names.isSelected())));
        beside(names);
        body().add(place, "grow, push, wmin 0, hmin 0, wrap");
    }

    /** Turns to what a use shows. */
    void turn(Use use) {
        names.setVisible(use.picture().isEmpty());
        use.picture().ifPresentOrElse(place::hold, () -> place.hold(pictureOf(use)));
        if (use.time().isPresent()) {
            clock();
        }
        clock.ifPresent(each -> each.follow(use.time()));
    }

    /** Makes what a use will show, out of sight, each piece in an event of its own. */
    void prepare(Use use, Background background, Runnable then) {
        use.picture().ifPresentOrElse(place::keep, () -> place.keep(pictureOf(use)));
        background.soon(() -> {
            if (use.time().isPresent()) {
                clock();
            }
            background.soon(then);
        });
    }

    /** Shows what is so now. */
    void refresh(Use use) {
        if (use.picture().isEmpty()) {
            pictureOf(use).show(use.scene());
        }
        head(use.title(dress));
        clock.ifPresent(ClockRow::refresh);
    }

    private UnitPicture pictureOf(Use use) {
        UnitPicture there = picture.orElseGet(() -> {
            UnitPicture made = new UnitPicture(use.scene(), dress.words(), dress.palette());
            made.onWeirMoved(weirMoved);
            motion.move(made);
            return made;
        });
        picture = Optional.of(there);
        return there;
    }

    /** The picture; there once a use was turned to that shows one. */
    UnitPicture picture() {
        return picture.orElseThrow();
    }

    Motion motion() {
        return motion;
    }

    ClockRow clock() {
        ClockRow there = clock.orElseGet(() -> {
            ClockRow made = new ClockRow(dress);
            made.moves(motion::runs);
            made.setVisible(false);
            body().add(made, "growx");
            return made;
        });
        clock = Optional.of(there);
        return there;
    }

    /** Other words or colours. */
    void dress(Dress other) {
        dress = other;
        Buttons.name(other, names);
        paper(other.palette());
        picture.ifPresent(each -> each.dress(other.words(), other.palette()));
        clock.ifPresent(each -> each.dress(other));
    }
}
