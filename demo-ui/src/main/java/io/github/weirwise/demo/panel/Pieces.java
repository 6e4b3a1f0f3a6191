package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Dress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

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
    private final List<Piece> made = new ArrayList<>();

    /** Pieces that are made in these slices. */
    public Pieces(Slices slices) {
        this.slices = slices;
    }

    /** One more, made when its turn comes. */
    public void add(Supplier<Piece> maker) {
        slices.add(() -> {
            Piece piece = maker.get();
            made.add(piece);
            piece.refresh().run();
        });
    }

    /** Begins to make them. */
    public void start() {
        slices.start();
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
