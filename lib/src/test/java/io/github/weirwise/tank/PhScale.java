package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * Conversions between the pH scales of sea water; dimensionless, salinity 5 to 45, 0 to 45 C.
 *
 * <p>The free and the total scale differ by the hydrogen ions that sulphate binds (Dickson 1990, J. Chem. Thermodyn.
 * 22:113). A meter set with NBS buffers differs by an electrode-dependent amount that no formula gives exactly.
 *
 * @since 0.1
 */
public final class PhScale {
    /**
     * What a meter set with NBS buffers reads over the total scale in sea water, near 35 and 25 C. From memory; it varies by
     * a few hundredths from electrode to electrode.
     */
    public static final double NBS_ABOVE_TOTAL = 0.13;

    private static final double KELVIN = 273.15;

    private PhScale() {}

    /** pH on the total scale for a reading of a meter set with NBS buffers, 4 to 11, sea water only. */
    public static double totalFromNbs(double pHNbs) {
        Require.inRange("pHNbs", pHNbs, 4, 11, "", "give the meter's reading");
        return pHNbs - NBS_ABOVE_TOTAL;
    }

    /**
     * How much higher the free scale reads than the total scale, log10(1 + S_T/K_S).
     *
     * @param practicalSalinity 5 to 45
     * @param celsius 0 to 45 C
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double freeAboveTotal(double practicalSalinity, double celsius) {
        double sulphate = 0.02824 * practicalSalinity / 35;
        return Math.log10(1 + sulphate / Math.exp(lnBisulphate(practicalSalinity, celsius)));
    }

    /**
     * Natural logarithm of the dissociation constant of the bisulphate ion, free scale, mol per kg of sea water: Dickson
     * 1990.
     *
     * @param practicalSalinity 5 to 45
     * @param celsius 0 to 45 C
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double lnBisulphate(double practicalSalinity, double celsius) {
        String fix = "give sea water";
        Require.inRange("practicalSalinity", practicalSalinity, 5, 45, "", fix);
        Require.inRange("celsius", celsius, 0, 45, "\u00b0C", fix);
        double t = celsius + KELVIN;
        double s = practicalSalinity;
        double ionic = 19.924 * s / (1000 - 1.005 * s);
        double root = Math.sqrt(ionic);
        return -4276.1 / t
                + 141.328
                - 23.093 * Math.log(t)
                + (-13856 / t + 324.57 - 47.986 * Math.log(t)) * root
                + (35474 / t - 771.54 + 114.723 * Math.log(t)) * ionic
                - 2698 / t * ionic * root
                + 1776 / t * ionic * ionic
                + Math.log(1 - 0.001005 * s);
    }
}
