package io.github.weirwise.internal.physics.colour;

/**
 * A colour to paint with: red, green and blue of 8 bits each by IEC 61966-2-1:1999 (sRGB, D65 white).
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 * @param clipped whether the colour lies outside what a screen can show, so that a channel was cut at 0 or 255
 */
public record Srgb(int red, int green, int blue, boolean clipped) {
    /** How far a linear channel may overshoot 0 to 1 before the colour counts as clipped. */
    private static final double SLACK = 0.002;

    /**
     * @throws IllegalArgumentException if a channel is not 0 to 255
     */
    public Srgb {
        if (((red | green | blue) & ~0xff) != 0) {
            throw new IllegalArgumentException(
                    "channels must be 0 to 255, got " + red + ", " + green + ", " + blue + "; clip them first");
        }
    }

    /** The nearest colour that a screen shows, each channel cut on its own. */
    public static Srgb of(Tristimulus colour) {
        double x = colour.x() / 100;
        double y = colour.y() / 100;
        double z = colour.z() / 100;
        // Inverse of the matrix of the sRGB primaries (IEC 61966-2-1), from the exact primaries and white.
        double red = 3.2409699419 * x - 1.5373831776 * y - 0.4986107603 * z;
        double green = -0.9692436363 * x + 1.8759675015 * y + 0.0415550574 * z;
        double blue = 0.0556300797 * x - 0.2039769589 * y + 1.0569715142 * z;
        boolean clipped = outside(red) || outside(green) || outside(blue);
        return new Srgb(eightBits(red), eightBits(green), eightBits(blue), clipped);
    }

    /** The number 0xRRGGBB. */
    public int packed() {
        return red << 16 | green << 8 | blue;
    }

    /**
     * Encoded channel, 0 to 1, of linear light, 0 to 1; values outside are cut.
     *
     * @param linear light; any number, never throws
     */
    public static double encode(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        return v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
    }

    private static int eightBits(double linear) {
        return (int) Math.round(255 * encode(linear));
    }

    private static boolean outside(double linear) {
        return !(linear >= -SLACK && linear <= 1 + SLACK);
    }
}
