package io.github.weirwise.internal.physics.colour;

import io.github.weirwise.report.Require;

/**
 * A colour as the CIE 1931 tristimulus values of the 2 degree observer (ISO/CIE 11664-3), without unit, on the scale where
 * a perfect white has Y = 100.
 *
 * @param x X, 0 to 1000
 * @param y Y, luminance, 0 to 1000
 * @param z Z, 0 to 1000
 */
public record Tristimulus(double x, double y, double z) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public Tristimulus {
        Require.inRange("x", x, 0, 1000, "", "white has about 95");
        Require.inRange("y", y, 0, 1000, "", "white has 100");
        Require.inRange("z", z, 0, 1000, "", "white has about 109");
    }

    /**
     * D65 light after a filter.
     *
     * @param transmission share of light that passes at each wavelength (nm), 0 to 1
     */
    static Tristimulus ofTransmission(Spectrum transmission) {
        CieTable table = CieTable.D65;
        double[] sum = new double[3];
        for (int i = 0; i < table.size(); i++) {
            double share = transmission.at(table.wavelengthNm(i));
            for (int f = 0; f < 3; f++) {
                sum[f] += share * table.weight(i, f);
            }
        }
        return new Tristimulus(sum[0], sum[1], sum[2]);
    }

    /** A number for each wavelength. */
    @FunctionalInterface
    interface Spectrum {
        double at(double wavelengthNm);
    }
}
