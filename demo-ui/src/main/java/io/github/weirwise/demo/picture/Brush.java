package io.github.weirwise.demo.picture;

import io.github.weirwise.demo.look.Palette;
import io.github.weirwise.demo.look.Words;
import io.github.weirwise.demo.panel.Standing;
import java.awt.Font;

/**
 * What every painter paints with: where, in which colours, words and letters.
 *
 * @param section the unit's parts
 * @param view model to pixels
 * @param palette colours
 * @param words texts
 * @param font letters; its size is that of plain labels
 */
record Brush(Section section, View view, Palette palette, Words words, Font font) {
    Font small() {
        return font.deriveFont(font.getSize2D() * 0.92f);
    }

    Font bold() {
        return font.deriveFont(Font.BOLD);
    }

    /** What is worked out and was read by nobody, never larger than what was. */
    Font computed() {
        return Standing.COMPUTED.font(font);
    }
}
