package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.look.Palette;
import java.awt.Color;
import java.awt.Font;

/**
 * What a number on the screen is worth. Each standing has one look everywhere, and its name is said in words beside it, so that
 * nothing hangs on a colour.
 */
public enum Standing {
    /** A person read it: upright and bold, with its age. */
    READ(Font.BOLD),
    /** Worked out: italic and pale, never larger than what was read. */
    COMPUTED(Font.ITALIC),
    /** Typed and not noted yet. */
    DRAFT(Font.PLAIN),
    /** What the unit is set for: beside a green band. */
    WANTED(Font.PLAIN);

    private final int style;

    Standing(int style) {
        this.style = style;
    }

    /** A font in this look. */
    public Font font(Font plain) {
        return plain.deriveFont(style);
    }

    /** Its text's colour. */
    public Color colour(Palette palette) {
        return switch (this) {
            case READ -> palette.ink();
            case COMPUTED -> palette.muted();
            case DRAFT -> palette.accent();
            case WANTED -> palette.good();
        };
    }
}
