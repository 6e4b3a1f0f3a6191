package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** The pieces of a screen: made one after another in slices, then kept up to date and dressed together. */
public final class Pieces {
    /**
     * A piece that is there.
     *
     * @param refresh shows what is so now
     * @param dress takes other words or colours
     */
    public record Piece(Runnable refresh, Consumer<Dress> dress) {
        /** A piece that shows nothing of what changes. */
        public static Piece still(Consumer<Dress> dress) {
            return new Piece(() -> {}, dress);
        }
    }

    private final Slices slices;
    private final List<JComponent> places;
    private final List<Piece> made = new ArrayList<>();

    /** Pieces that are made in these slices and put into these places, which are laid out anew after each. */
    public Pieces(Slices slices, JComponent... places) {
        this.slices = slices;
        this.places = List.of(places);
    }

    /** One more, made when its turn comes. */
    public void add(Supplier<Piece> maker) {
        slices.add(() -> {
            Piece piece = maker.get();
            made.add(piece);
            piece.refresh().run();
            places.forEach(JComponent::revalidate);
        });
    }

    /** Something to be done between two pieces that is none by itself. */
    public void also(Runnable work) {
        slices.add(() -> {
            work.run();
            places.forEach(JComponent::revalidate);
        });
    }

    /** Those that are there show what is so now. */
    public void refresh() {
        List.copyOf(made).forEach(piece -> piece.refresh().run());
    }

    /** Those that are there take other words or colours. */
    public void dress(Dress dress) {
        List.copyOf(made).forEach(piece -> piece.dress().accept(dress));
    }
}
