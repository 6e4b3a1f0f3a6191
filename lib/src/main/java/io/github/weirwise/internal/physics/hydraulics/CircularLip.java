package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Require;

/**
 * Discharge (m3/s) into an open, upright pipe or funnel rim: a weir all round the rim at small heads, an opening of its
 * bore at larger ones, whichever passes less. Q = min(0.6 (2/3) sqrt(2 g) pi D h^1.5, 0.6 A sqrt(2 g h)).
 *
 * <p>The coefficients and the change near h = 0.2-0.4 D are common practice for drop inlets, from memory; 15 % at best.
 *
 * @param diameterM inner diameter of the rim, 0.001 to 10 m
 */
public record CircularLip(double diameterM) {
    private static final double GRAVITY = 9.80665;
    private static final double COEFFICIENT = 0.6;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public CircularLip {
        Require.inRange("diameterM", diameterM, 0.001, 10, "m", "give the rim's diameter in metres");
    }

    /**
     * Discharge, m3/s; 0 at or below the rim.
     *
     * @param headM water level above the rim, -100 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double discharge(double headM) {
        Require.inRange("headM", headM, -100, 100, "m", "give the level over the rim in metres");
        if (headM <= 0) {
            return 0;
        }
        double speed = COEFFICIENT * Math.sqrt(2 * GRAVITY * headM);
        return speed * Math.PI * diameterM * Math.min(headM * 2 / 3, diameterM / 4);
    }
}
