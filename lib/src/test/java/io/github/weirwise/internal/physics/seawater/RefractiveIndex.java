package io.github.weirwise.internal.physics.seawater;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * Refractive index of sea water at one atmosphere, without unit, by Quan &amp; Fry 1995, Applied Optics 34:3477
 * (coefficients from memory), and the salinity behind a refractive index.
 *
 * <p>Published for {@link #SALINITY}, {@link #CELSIUS} and {@link #WAVELENGTH_NM}. A refractometer scaled for brine
 * (sodium chloride) shows sea water 1 to 2 units of salinity too high (from memory).
 *
 * @since 0.1
 */
public final class RefractiveIndex {
    /** Salinities of the fit. */
    public static final Range SALINITY = new Range(0, 35);
    /** Temperatures of the fit, degrees Celsius. */
    public static final Range CELSIUS = new Range(0, 30);
    /** Wavelengths of the fit, nm. */
    public static final Range WAVELENGTH_NM = new Range(400, 700);
    /** Wavelength of the sodium D lines, nm, to which instruments refer. */
    public static final double SODIUM_D_NM = 589.3;

    private RefractiveIndex() {}

    /**
     * Refractive index.
     *
     * @param practicalSalinity 0 to 150
     * @param celsius -4 to 100
     * @param wavelengthNm in vacuum or air, 300 to 1100 nm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double of(double practicalSalinity, double celsius, double wavelengthNm) {
        Seawater.requireWater(practicalSalinity, celsius);
        Require.inRange("wavelengthNm", wavelengthNm, 300, 1100, "nm", "sodium light has 589.3 nm");
        double l = wavelengthNm;
        double t = celsius;
        return 1.31405
                + practicalSalinity * saltSlope(t, l)
                - 2.02e-6 * t * t
                + (15.868 - 0.00423 * t) / l
                - 4382 / (l * l)
                + 1.1455e6 / (l * l * l);
    }

    /**
     * Practical salinity of water with a given refractive index; the fit is a straight line in salinity.
     *
     * @param index that of water with a salinity between 0 and 100, about 1.33 and 1.36
     * @param celsius -4 to 100
     * @param wavelengthNm 300 to 1100 nm
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double salinity(double index, double celsius, double wavelengthNm) {
        double fresh = of(0, celsius, wavelengthNm);
        double slope = saltSlope(celsius, wavelengthNm);
        Require.inRange("index", index, fresh, fresh + 100 * slope, "", "sea water has about 1.339 in sodium light");
        return (index - fresh) / slope;
    }

    private static double saltSlope(double celsius, double wavelengthNm) {
        return 1.779e-4 + celsius * (-1.05e-6 + 1.6e-8 * celsius) + 0.01155 / wavelengthNm;
    }
}
