package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Range;
import io.github.weirwise.report.Require;

/**
 * Discharge (m3/s) through a small opening under a head (m), and the head for a discharge: Torricelli with a discharge
 * coefficient, Q = Cd A sqrt(2 g h).
 *
 * <p>Published coefficients hold for Reynolds numbers in {@link #PUBLISHED_REYNOLDS}; below, Cd first rises, then falls.
 * The head is that over the opening's centre, which should lie over about 1.5 openings high; nearer the surface use
 * {@link Slot}.
 *
 * @param areaM2 area of the opening, 1e-9 to 100 m2
 * @param coefficient Cd, above 0 to 1
 * @since 0.1
 */
public record Orifice(double areaM2, double coefficient) {
    /** Reynolds numbers for which the coefficients below hold. */
    public static final Range PUBLISHED_REYNOLDS = new Range(1e4, 1e7);
    /** Thin plate with sharp edges: Kirchhoff's two-dimensional slot pi/(pi + 2); measured 0.60 to 0.62. */
    public static final double SHARP_EDGED = Math.PI / (Math.PI + 2);
    /** Tube two or three bores long; from memory. */
    public static final double SHORT_TUBE = 0.81;
    /** Rounded entrance; from memory. */
    public static final double ROUNDED = 0.975;
    /** Tube that projects inward; from memory. */
    public static final double RE_ENTRANT = 0.5;

    private static final double GRAVITY = 9.80665;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public Orifice {
        Require.inRange("areaM2", areaM2, 1e-9, 100, "m2", "a hole of 10 mm has 7.85e-5 m2");
        Require.inRange("coefficient", coefficient, 1e-3, 1, "", "a sharp-edged hole has 0.61");
    }

    /**
     * A round hole of a given bore.
     *
     * @param boreM diameter of the hole, 1e-4 to 10 m
     * @param coefficient discharge coefficient, 1e-3 to 1; 0.61 for a sharp edge
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static Orifice round(double boreM, double coefficient) {
        Require.inRange("boreM", boreM, 1e-4, 10, "m", "give the hole's diameter in metres");
        return new Orifice(Math.PI / 4 * boreM * boreM, coefficient);
    }

    /**
     * Discharge, m3/s; 0 for a head of zero or less.
     *
     * @param headM head over the centre, or difference of levels if drowned, -100 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double discharge(double headM) {
        Require.inRange("headM", headM, -100, 100, "m", "give the head over the opening's centre in metres");
        return headM <= 0 ? 0 : coefficient * areaM2 * Math.sqrt(2 * GRAVITY * headM);
    }

    /**
     * Head that passes a discharge, m.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double head(double dischargeM3PerS) {
        Require.inRange("dischargeM3PerS", dischargeM3PerS, 0, 1000, "m3/s", "give the flow through the opening");
        double speed = dischargeM3PerS / (coefficient * areaM2);
        return speed * speed / (2 * GRAVITY);
    }
}
