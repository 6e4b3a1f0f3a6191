package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;

/** Says what the last turn of a knob does, and why. */
public final class ChangeCard extends Card {
    private static final long serialVersionUID = 1L;

    private final transient TryDesk desk;
    private final Prose text = new Prose();
    private transient Dress dress;

    /** The change told for a desk of free play. */
    public ChangeCard(TryDesk desk, Dress dress) {
        super(dress.palette(), "[grow,fill]", "[grow,fill]");
        this.desk = desk;
        this.dress = dress;
        text.setName("whatChanged");
        body().add(text, "growx, hmin 72");
        dress(dress);
    }

    /** Shows the newest change. */
    public void refresh() {
        text.setText(desk.whatChanged().map(dress.words()::say).orElseGet(() -> dress.text("change.none")));
    }

    /** Other words or colours. */
    public void dress(Dress other) {
        dress = other;
        head(other.text("change.title"));
        paper(other.palette());
        refresh();
    }
}
