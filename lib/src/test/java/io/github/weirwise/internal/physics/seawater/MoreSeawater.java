package io.github.weirwise.internal.physics.seawater;

import io.github.weirwise.report.Range;

/** What is published of sea water and the library does not ask: surface tension and its length, ionic strength, oxygen by mass. Arguments are not checked. */
public final class MoreSeawater {
    private static final double KELVIN_OF_ZERO_CELSIUS = 273.15;
    private static final double STANDARD_GRAVITY = 9.80665;
    private static final double CRITICAL_KELVIN = 647.096;

    private MoreSeawater() {}

    /** Salinities of the surface tension fit, g/kg. */
    public static final Range SURFACE_TENSION_SALINITY = new Range(0, 131);

    /** Temperatures of the surface tension fit, degrees Celsius. */
    public static final Range SURFACE_TENSION_CELSIUS = new Range(1, 92);

    /**
     * Surface tension of clean sea water against air, N/m: pure water by IAPWS R1-76(2014), the effect of salt by Nayar
     * et al. 2014, J. Phys. Chem. Ref. Data 43:043103 = IAPWS G14-19. Accuracy 0.6 % within
     * {@link #SURFACE_TENSION_SALINITY} and {@link #SURFACE_TENSION_CELSIUS}. Organic matter in tank water lowers it by
     * several to more than 20 mN/m; that is not in this number.
     *
     * @param practicalSalinity 0 to 150, used as g/kg
     * @param celsius ITS-90, -4 to 100
     */
    public static double surfaceTension(double practicalSalinity, double celsius) {
        double tau = 1 - (celsius + KELVIN_OF_ZERO_CELSIUS) / CRITICAL_KELVIN;
        double pure = 0.2358 * Math.pow(tau, 1.256) * (1 - 0.625 * tau);
        return pure * (1 + practicalSalinity * (3.766e-4 + 2.347e-6 * celsius));
    }

    /**
     * Oxygen in solution at equilibrium with moist air at one atmosphere, kg/m3 (times 1000: mg/L), from
     * {@link Seawater#oxygenSolubility} and {@link Seawater#density}; 31.998 g/mol.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @param celsius ITS-90, -4 to 100
     */
    public static double oxygenSolubilityKgPerM3(double practicalSalinity, double celsius) {
        return Seawater.oxygenSolubility(practicalSalinity, celsius)
                * 31.998e-9
                * Seawater.density(practicalSalinity, celsius);
    }

    /**
     * Ionic strength, mol per kg of water: 19.924 S/(1000 - 1.005 S), DOE 1994 handbook; Dickson, Sabine &amp; Christian
     * 2007.
     *
     * @param practicalSalinity PSS-78, 0 to 150; published for 0 to 45
     */
    public static double ionicStrength(double practicalSalinity) {
        return 19.924 * practicalSalinity / (1000 - 1.005 * practicalSalinity);
    }

    /**
     * Capillary length sqrt(sigma/(rho g)), m: the size at which surface tension and weight are equal, 2.70 mm in clean
     * sea water of 25 degrees. Under a few of it a weir's nappe clings.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @param celsius ITS-90, -4 to 100
     */
    public static double capillaryLength(double practicalSalinity, double celsius) {
        double weight = STANDARD_GRAVITY * Seawater.density(practicalSalinity, celsius);
        return Math.sqrt(surfaceTension(practicalSalinity, celsius) / weight);
    }
}
