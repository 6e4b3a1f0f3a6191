package io.github.weirwise.internal.physics.seawater;

import io.github.weirwise.report.Require;

/**
 * Density (kg/m3), viscosity (Pa s) and oxygen solubility (umol/kg) of sea water at one
 * atmosphere, by EOS-80, Sharqawy et al. (2010) and Garcia &amp; Gordon (1992).
 *
 * <p>Temperatures are degrees Celsius on ITS-90. Salinity is practical salinity (PSS-78). Where a source asks for grams
 * of salt per kilogram, the practical salinity is used as that number: the 0.5 % between them moves viscosity by 0.04 %,
 * far inside the sources' own error.
 *
 * <p>Every function takes salinity 0 to 150 and -4 to 100 degrees and throws
 * {@link io.github.weirwise.report.OutOfRangeException} beyond; the narrower range in which the source vouches for the
 * number stands with the function.
 */
public final class Seawater {
    /** Grams per kilogram of reference salinity for one unit of practical salinity: TEOS-10, 35.16504/35. */
    public static final double GRAMS_PER_KG_PER_PRACTICAL = 35.16504 / 35;

    private static final double KELVIN_OF_ZERO_CELSIUS = 273.15;
    private static final double T68_PER_T90 = 1.00024;

    private Seawater() {}

    /**
     * Density of sea water at one atmosphere, kg/m3: the one-atmosphere equation of state EOS-80, Millero &amp; Poisson
     * 1981; Fofonoff &amp; Millard 1983, UNESCO Technical Papers in Marine Science 44, equations 13 and 14. Standard
     * error 0.0036 kg/m3 within salinity 0 to 42 and -2 to 40 degrees.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @param celsius ITS-90, -4 to 100
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double density(double practicalSalinity, double celsius) {
        requireWater(practicalSalinity, celsius);
        double s = practicalSalinity;
        double t = celsius * T68_PER_T90;
        double pure = 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double root = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
        return pure + s * (linear + Math.sqrt(s) * root + s * 4.8314e-4);
    }

    /**
     * Dynamic viscosity, Pa s: Sharqawy, Lienhard &amp; Zubair 2010, Desalination and Water Treatment 16:354, equations
     * 22 and 23. Stated accuracy 1.5 % within salinity 0 to 150 and 0 to 180 degrees.
     *
     * @param practicalSalinity 0 to 150, used as g/kg
     * @param celsius ITS-90, -4 to 100
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double viscosity(double practicalSalinity, double celsius) {
        requireWater(practicalSalinity, celsius);
        double t = celsius;
        double s = practicalSalinity / 1000;
        double shifted = t + 64.992620050;
        double pure = 4.2844324477e-5 + 1 / (0.15700386464 * shifted * shifted - 91.296496657);
        double a = 1.5409136040 + t * (1.9981117208e-2 - t * 9.5203865864e-5);
        double b = 7.9739318223 + t * (-7.5614568881e-2 + t * 4.7237011074e-4);
        return pure * (1 + s * (a + b * s));
    }

    /**
     * Oxygen in solution at equilibrium with moist air at one atmosphere, micromoles per kilogram: Garcia &amp; Gordon
     * 1992, Limnology and Oceanography 37:1307, their fit to the data of Benson &amp; Krause. About 0.3 % within
     * salinity 0 to 42 and freezing to 40 degrees. The fit is in IPTS-68; the conversion is made here.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @param celsius ITS-90, -4 to 100
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double oxygenSolubility(double practicalSalinity, double celsius) {
        requireWater(practicalSalinity, celsius);
        double s = practicalSalinity;
        double t = celsius * T68_PER_T90;
        double x = Math.log((298.15 - t) / (KELVIN_OF_ZERO_CELSIUS + t));
        double fresh = 5.80871 + x * (3.20291 + x * (4.17887 + x * (5.10006 + x * (-9.86643e-2 + x * 3.80369))));
        double salting = -7.01577e-3 + x * (-7.70028e-3 + x * (-1.13864e-2 + x * -9.51519e-3));
        return Math.exp(fresh + s * (salting - 2.75915e-7 * s));
    }

    static void requireWater(double practicalSalinity, double celsius) {
        Require.inRange(
                "practicalSalinity", practicalSalinity, 0, 150, "", "give the practical salinity, about 35 at sea");
        Require.inRange("celsius", celsius, -4, 100, "\u00b0C", "give the water temperature in degrees Celsius");
    }
}
