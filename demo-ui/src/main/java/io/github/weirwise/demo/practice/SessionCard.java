package io.github.weirwise.demo.practice;

import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.panel.Card;

/** A card of a session with a heading of its own; whoever makes one dresses it once all is in place. */
abstract class SessionCard extends Card implements PracticePage {
    private static final long serialVersionUID = 1L;

    private final String titleKey;
    transient Dress dress;

    SessionCard(String titleKey, String columns, String rows, Dress dress) {
        super(dress.palette(), columns, rows);
        this.titleKey = titleKey;
        this.dress = dress;
    }

    @Override
    public void dress(Dress other) {
        dress = other;
        dress(other.text(titleKey), other);
    }
}
