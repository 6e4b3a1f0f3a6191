package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.Background;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Pieces.Piece;
import io.github.weirwise.demo.picture.Scene;
import io.github.weirwise.demo.start.BeginCard;
import io.github.weirwise.demo.start.UnitList;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;

/** The start page: one's own units on the left, the invented tank and practice apart from them on the right. */
final class StartUse extends UseOfPieces {
    static final String KEY = "use.start";

    private final UnitList units;
    private final Runnable look;

    /**
     * @param look reads the units' journals anew
     * @param cards ways to begin, by the names of their buttons, on a card each
     */
    StartUse(
            UnitList units,
            Runnable look,
            Map<String, Map<String, Runnable>> cards,
            Background background,
            Dress dress) {
        super(KEY, "[][][]push", background, dress);
        this.units = units;
        this.look = look;
        cards.forEach((key, ways) -> pieces().add(() -> {
            BeginCard card = new BeginCard(key, ways, dress());
            panel().add(card, "wmin 0");
            return Piece.still(card::dress);
        }));
    }

    @Override
    public Optional<JComponent> picture() {
        return Optional.of(units);
    }

    @Override
    public Scene scene() {
        throw new IllegalStateException("the list of units stands in the picture's place");
    }

    @Override
    public String title(Dress other) {
        return other.text("start.units");
    }

    /** Turning to the page reads the journals anew. */
    @Override
    public void refresh() {
        look.run();
    }

    @Override
    public void dress(Dress other) {
        super.dress(other);
        units.dress(other);
    }
}
