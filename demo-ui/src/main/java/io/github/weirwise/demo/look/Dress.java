package io.github.weirwise.demo.look;

/**
 * How everything is dressed: which words, which colours.
 *
 * @param words language and units
 * @param palette colours
 */
public record Dress(Words words, Palette palette) {
    /** English, metric, light. */
    public static final Dress USUAL = new Dress(Words.ENGLISH, Palette.LIGHT);

    /** The text with this name. */
    public String text(String name, Object... values) {
        return words.of(name, values);
    }
}
