package io.github.weirwise.internal.physics.foam;

import io.github.weirwise.report.Require;

/**
 * Geometry of dry foam: liquid channels (Plateau borders) along the edges of Kelvin cells, and the drainage constants
 * that follow for surfaces at rest. Weaire &amp; Hutzler 1999, The Physics of Foams; Leonard &amp; Lemlich 1965; Koehler,
 * Hilgenfeldt &amp; Stone 2000, Langmuir 16:6327.
 *
 * @since 0.1
 */
public final class PlateauBorder {
    /** Cross-section of a border over the square of its wall radius, sqrt 3 - pi/2. */
    public static final double AREA = Math.sqrt(3) - Math.PI / 2;
    /** Liquid fraction over (r/L)^2 for Kelvin cells: 12 borders of length L in a cell of 8 sqrt2 L^3; 0.171. */
    public static final double FRACTION = 12 * AREA / (8 * Math.sqrt(2));
    /** Edge length over the radius of the sphere of the same volume, Kelvin cell, dry foam; 0.718. */
    public static final double EDGE_PER_RADIUS = Math.cbrt(Math.PI / (6 * Math.sqrt(2)));
    /** Resistance of a border with walls at rest: mean speed = rho g A/(49.7 mu); Leonard &amp; Lemlich 1965. */
    public static final double WALL_RESISTANCE = 49.7;
    /** Permeability k = K1 L^2 eps^2 of borders with walls at rest, oriented at random; 0.0063. */
    public static final double PERMEABILITY = AREA / (3 * WALL_RESISTANCE * FRACTION);
    /** The m of {@link Drainage} that follows, K1 (L/r)^2; 0.00326. */
    public static final double RIGID_MOBILITY = PERMEABILITY * EDGE_PER_RADIUS * EDGE_PER_RADIUS;

    private PlateauBorder() {}

    /**
     * Wall radius of the borders, m: L sqrt(eps/0.171).
     *
     * @param bubbleRadiusM 1e-6 to 0.1 m
     * @param liquidFraction eps, 0 to 0.36; the geometry is that of dry foam, good to about 0.05
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double wallRadius(double bubbleRadiusM, double liquidFraction) {
        Require.inRange("bubbleRadiusM", bubbleRadiusM, 1e-6, 0.1, "m", "give the bubbles' radius in metres");
        Require.inRange("liquidFraction", liquidFraction, 0, 0.36, "", "above 0.36 bubbles are round");
        return EDGE_PER_RADIUS * bubbleRadiusM * Math.sqrt(liquidFraction / FRACTION);
    }
}
