package io.github.weirwise.demo.look;

import java.awt.Color;

/**
 * The colours of one appearance. Text is only ever {@link #ink}, {@link #muted} or {@link #accent} on {@link #paper} or
 * {@link #ground}; the others mark lines and areas whose meaning is also told by words, dashes or place.
 *
 * @param dark whether this is the dark appearance
 * @param ground behind everything
 * @param paper behind text and drawings
 * @param ink text and outlines
 * @param muted secondary text
 * @param rule hairlines and frames
 * @param accent the level, and what can be pressed
 * @param second second series, and what was moved
 * @param good the wanted band
 * @param water water
 * @param deep water further down
 * @param glass filled walls
 * @param foam foam body
 * @param foamLine films between foam bubbles
 * @param media the biofilter's media
 * @param pad the filter pad
 * @param danger marks of danger
 */
public record Palette(
        boolean dark,
        Color ground,
        Color paper,
        Color ink,
        Color muted,
        Color rule,
        Color accent,
        Color second,
        Color good,
        Color water,
        Color deep,
        Color glass,
        Color foam,
        Color foamLine,
        Color media,
        Color pad,
        Color danger) {
    /** Dark ink on white; line colours after Okabe and Ito, which most colour-blind people can tell apart. */
    public static final Palette LIGHT = new Palette(
            false,
            new Color(0xEDF1F2),
            new Color(0xFFFFFF),
            new Color(0x1F2933),
            new Color(0x59616B),
            new Color(0xC3CBD1),
            new Color(0x0072B2),
            new Color(0xC75400),
            new Color(0x00865F),
            new Color(0xD5EAF6),
            new Color(0xA3CFE8),
            new Color(0x3A4650),
            new Color(0xFBF6E6),
            new Color(0xA0916A),
            new Color(0xCDBB97),
            new Color(0xDDE6E3),
            new Color(0xB3261E));

    /** Light ink on near-black. */
    public static final Palette DARK = new Palette(
            true,
            new Color(0x11171B),
            new Color(0x1B2329),
            new Color(0xE9EEF1),
            new Color(0xA9B4BC),
            new Color(0x43505A),
            new Color(0x6CBFEF),
            new Color(0xF0954E),
            new Color(0x3CC79B),
            new Color(0x214A63),
            new Color(0x16374C),
            new Color(0xB9C4CC),
            new Color(0x6B665A),
            new Color(0xC9BE9C),
            new Color(0x7A6B4C),
            new Color(0x46534F),
            new Color(0xFF8A80));

    /** The palette for an appearance. */
    public static Palette of(boolean dark) {
        return dark ? DARK : LIGHT;
    }

    /** The same colour, see-through by an alpha from 0 to 255. */
    public static Color fade(Color colour, int alpha) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }

    /** Mix of two colours, {@code share} of the second. */
    public static Color mix(Color first, Color second, double share) {
        double keep = 1 - share;
        return new Color(
                (int) Math.round(keep * first.getRed() + share * second.getRed()),
                (int) Math.round(keep * first.getGreen() + share * second.getGreen()),
                (int) Math.round(keep * first.getBlue() + share * second.getBlue()));
    }
}
