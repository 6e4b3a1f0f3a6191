package io.github.weirwise.internal.physics.seawater;

import io.github.weirwise.report.Require;

/**
 * A glass hydrometer read at another temperature than it was made for: what it shows for a salinity, and the salinity
 * (practical) behind what it shows.
 *
 * <p>It floats where its mass is the mass of the water it displaces, and its glass grows with temperature: reading =
 * density(S, T) (1 + g (T - t))/density(0, t0), t and t0 being those of the scale. Derived from Archimedes; g for glass
 * 25e-6 per kelvin, from memory.
 *
 * @param scale the scale printed in the instrument
 * @param expansionPerKelvin g, cubical expansion of its body, 0 to 3e-4 1/K
 * @since 0.1
 */
public record Hydrometer(SpecificGravity scale, double expansionPerKelvin) {
    /** Cubical expansion of soda-lime glass, 1/K; from memory. */
    public static final double GLASS_EXPANSION_PER_KELVIN = 25e-6;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if the expansion is out of its limits
     */
    public Hydrometer {
        if (scale == null) {
            throw new IllegalArgumentException("scale must be given: it is printed in the instrument");
        }
        Require.inRange("expansionPerKelvin", expansionPerKelvin, 0, 3e-4, "1/K", "glass has 25e-6");
    }

    /** A glass hydrometer with a given scale. */
    public static Hydrometer ofGlass(SpecificGravity scale) {
        return new Hydrometer(scale, GLASS_EXPANSION_PER_KELVIN);
    }

    /**
     * What the instrument shows.
     *
     * @param practicalSalinity PSS-78, 0 to 150
     * @param celsius temperature of the water, -4 to 100
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double reading(double practicalSalinity, double celsius) {
        return Seawater.density(practicalSalinity, celsius) * growth(celsius) / scale.waterDensity();
    }

    /**
     * Practical salinity behind a reading.
     *
     * @param reading what the instrument shows for a salinity between 0 and 100, about 1.0 and 1.08
     * @param celsius temperature of the water when read, -4 to 100
     * @throws io.github.weirwise.report.OutOfRangeException if no salinity between 0 and 100 shows that reading
     */
    public double salinity(double reading, double celsius) {
        Require.inRange(
                "reading",
                reading,
                reading(0, celsius),
                reading(100, celsius),
                "",
                "check the scale and the temperature");
        return SpecificGravity.salinityOfDensity(reading * scale.waterDensity() / growth(celsius), celsius);
    }

    private double growth(double celsius) {
        return 1 + expansionPerKelvin * (celsius - scale.sampleCelsius());
    }
}
