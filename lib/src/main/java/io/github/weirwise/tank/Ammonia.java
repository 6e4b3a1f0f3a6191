package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * Share of total ammonia that is un-ionised (NH3) in sea water, 0 to 1: Clegg &amp; Whitfield 1995, Geochimica et
 * Cosmochimica Acta 59:2403, equation 18; -2 to 40 C, salinity 0 to 40.
 *
 * <p>Only the un-ionised part is toxic, and the share hangs on the pH scale: one and the same water reads about 0.1 higher
 * on the free scale and about 0.13 higher on a meter set with NBS (fresh-water) buffers than on the total scale. Feeding
 * such a reading straight in overstates the un-ionised share by a quarter to a third.
 */
public final class Ammonia {
    private static final double KELVIN = 273.15;
    private static final String WATER = "give practical salinity and degrees Celsius of the tank water";

    private Ammonia() {}

    /**
     * Share of total ammonia that is un-ionised.
     *
     * @param pHTotal pH on the total scale, 4 to 11
     * @param practicalSalinity practical salinity, 0 to 40
     * @param celsius water temperature, -2 to 40 C
     * @return 0 to 1, amounts per kilogram of sea water
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double unionisedFraction(double pHTotal, double practicalSalinity, double celsius) {
        Require.inRange("pHTotal", pHTotal, 4, 11, "", "give the pH on the total scale");
        return share(pKa(practicalSalinity, celsius), pHTotal);
    }

    /**
     * Negative logarithm of the ammonium dissociation constant, total scale, mol per kg of sea water.
     *
     * @param practicalSalinity practical salinity, 0 to 40
     * @param celsius water temperature, -2 to 40 C
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double pKa(double practicalSalinity, double celsius) {
        return pKaPerKgOfWater(practicalSalinity, celsius) - Math.log10(1 - 0.001005 * practicalSalinity);
    }

    /**
     * The same constant as the paper prints it, mol per kg of pure water (equation 18).
     *
     * @param practicalSalinity practical salinity, 0 to 40
     * @param celsius water temperature, -2 to 40 C
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double pKaPerKgOfWater(double practicalSalinity, double celsius) {
        Require.inRange("practicalSalinity", practicalSalinity, 0, 40, "", WATER);
        Require.inRange("celsius", celsius, -2, 40, "\u00b0C", WATER);
        double t = celsius + KELVIN;
        double rootT = Math.sqrt(t);
        double s = practicalSalinity;
        double rootS = Math.sqrt(s);
        double quarter = 0.04203362 - 11.24742 / t;
        double half = -13.6416 + 1.176949 * rootT - 0.02860785 * t + 545.4834 / t;
        double oneAndHalf = -0.1462507 + 0.0090226468 * rootT - 0.0001471361 * t + 10.5425 / t;
        double two = 0.004669309 - 0.0001691742 * rootT - 0.5677934 / t;
        double twoAndHalf = -2.354039e-5 + 0.009698623 / t;
        return 9.244605
                - 2729.33 * (1 / 298.15 - 1 / t)
                + quarter * Math.sqrt(rootS)
                + half * rootS
                + oneAndHalf * s * rootS
                + two * s * s
                + twoAndHalf * s * s * rootS;
    }

    private static double share(double pKa, double pH) {
        return 1 / (1 + Math.pow(10, pKa - pH));
    }
}
