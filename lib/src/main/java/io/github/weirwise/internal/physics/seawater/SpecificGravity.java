package io.github.weirwise.internal.physics.seawater;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * Specific gravity of sea water at the reference temperatures in use, and back to practical salinity, by its definition
 * SG(t/t0) = density of the sample at t over density of pure water at t0, both at one atmosphere (EOS-80).
 *
 * <p>Say which one is meant: at salinity 35 the first three differ by up to 0.0005 (0.6 in salinity), and 25/4 reads
 * 0.0030 lower than 25/25 (about 4 in salinity).
 */
public enum SpecificGravity {
    /** Sample and water at 25 degrees Celsius; the usual scale of aquarium instruments. */
    AT_25_25(25, 25),
    /** Sample and water at 20 degrees Celsius; the usual scale of refractometers. */
    AT_20_20(20, 20),
    /** Sample and water at 60 degrees Fahrenheit. */
    AT_60F_60F(140.0 / 9, 140.0 / 9),
    /** Sample at 25 degrees Celsius, water at its greatest density, 3.98 degrees. */
    AT_25_4(25, 3.98);

    /** Salinities that the inverse answers. */
    public static final Range SALINITY = new Range(0, 100);

    private final double sampleCelsius;
    private final double waterDensity;

    SpecificGravity(double sampleCelsius, double waterCelsius) {
        this.sampleCelsius = sampleCelsius;
        this.waterDensity = Seawater.density(0, waterCelsius);
    }

    /** Temperature of the sample for which the scale is made, degrees Celsius on ITS-90. */
    public double sampleCelsius() {
        return sampleCelsius;
    }

    /** Density of the pure water that counts as 1 on this scale, kg/m3. */
    public double waterDensity() {
        return waterDensity;
    }

    /**
     * Specific gravity of water of a given salinity.
     *
     * @param practicalSalinity PSS-78, 0 to 150; published for 0 to 42
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double of(double practicalSalinity) {
        return Seawater.density(practicalSalinity, sampleCelsius) / waterDensity;
    }

    /**
     * Practical salinity of water of a given specific gravity.
     *
     * @param specificGravity that of water with a salinity between 0 and 100, about 1.0 and 1.08
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double salinity(double specificGravity) {
        Require.inRange(
                "specificGravity",
                specificGravity,
                of(SALINITY.low()),
                of(SALINITY.high()),
                "",
                "sea water has about 1.026; check which scale the instrument shows");
        return salinityOfDensity(specificGravity * waterDensity, sampleCelsius);
    }

    /**
     * Whether a number that was given as a salinity is most likely a specific gravity: 1.003 to 1.050, about 4 to 65 in
     * salinity on these scales, and nearly fresh water if it were a salinity.
     *
     * @param givenAsSalinity any number; never throws
     */
    public static boolean looksLikeOne(double givenAsSalinity) {
        return givenAsSalinity >= 1.003 && givenAsSalinity <= 1.05;
    }

    /** Newton's method; density is very nearly a straight line in salinity, so a few steps reach the last digit. */
    static double salinityOfDensity(double density, double celsius) {
        double s = Math.max(0, (density - Seawater.density(0, celsius)) / 0.77);
        for (int step = 0; step < 20; step++) {
            double slope = (Seawater.density(s + 0.01, celsius) - Seawater.density(s, celsius)) / 0.01;
            double move = (Seawater.density(s, celsius) - density) / slope;
            s = Math.max(0, Math.min(s - move, SALINITY.high() + 20));
            if (Math.abs(move) < 1e-11) {
                break;
            }
        }
        return s;
    }
}
