package io.github.weirwise.internal.physics.colour;

/** Ways back from a colour to numbers, and the plane that tables of colours are printed in; to hold the library's colours against. */
public final class Chromaticity {
    private Chromaticity() {}

    /** The light of D65 itself, summed over the tables at 5 nm: 95.047, 100, 108.897. */
    public static Tristimulus daylight() {
        return Tristimulus.ofTransmission(nm -> 1);
    }

    /** Chromaticity x = X/(X + Y + Z); that of D65 for black. */
    public static double x(Tristimulus colour) {
        return sum(colour) > 0 ? colour.x() / sum(colour) : 0.31272;
    }

    /** Chromaticity y = Y/(X + Y + Z); that of D65 for black. */
    public static double y(Tristimulus colour) {
        return sum(colour) > 0 ? colour.y() / sum(colour) : 0.32903;
    }

    private static double sum(Tristimulus colour) {
        return colour.x() + colour.y() + colour.z();
    }

    /** Tristimulus values of this colour. */
    public static Tristimulus tristimulus(Srgb colour) {
        double r = 100 * decode(colour.red() / 255.0);
        double g = 100 * decode(colour.green() / 255.0);
        double b = 100 * decode(colour.blue() / 255.0);
        return new Tristimulus(
                0.4123907993 * r + 0.3575843394 * g + 0.1804807884 * b,
                0.2126390059 * r + 0.7151686788 * g + 0.0721923154 * b,
                0.0193308187 * r + 0.1191947798 * g + 0.9505321522 * b);
    }

    /**
     * Linear light, 0 to 1, of an encoded channel, 0 to 1; values outside are cut.
     *
     * @param encoded V'; any number, never throws
     */
    public static double decode(double encoded) {
        double v = Math.max(0, Math.min(1, encoded));
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
