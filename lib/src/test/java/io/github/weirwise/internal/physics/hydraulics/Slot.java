package io.github.weirwise.internal.physics.hydraulics;

import io.github.weirwise.report.Require;

/**
 * Discharge (m3/s) through an upright rectangular slot whose lower edge is a weir until the water reaches its upper edge:
 * Q = Cd (2/3) sqrt(2 g) b (h^1.5 - (h - a)^1.5), the second term only once h is over a (Torricelli's speed integrated
 * over the opening).
 *
 * <p>The switch is at the slot's own height and without a step in Q; from 1.5 heights on a plain orifice with the head
 * over the centre is within 1.2 %. One coefficient serves both states (0.61 for sharp edges); real slots differ by 5 to
 * 10 % near the switch.
 *
 * @param widthM b, 0.0005 to 100 m
 * @param heightM a, 0.0005 to 100 m
 * @param coefficient Cd, above 0 to 1
 * @since 0.1
 */
public record Slot(double widthM, double heightM, double coefficient) {
    private static final double GRAVITY = 9.80665;

    /**
     * @throws io.github.weirwise.report.OutOfRangeException outside the limits
     */
    public Slot {
        Require.inRange("widthM", widthM, 5e-4, 100, "m", "give the slot's width in metres");
        Require.inRange("heightM", heightM, 5e-4, 100, "m", "give the slot's height in metres");
        Require.inRange("coefficient", coefficient, 1e-3, 1, "", "a sharp-edged slot has 0.61");
    }

    /**
     * Whether the slot is only partly covered and works as a weir.
     *
     * @param headM level over the lower edge, m; any number, never throws
     */
    public boolean isWeir(double headM) {
        return headM <= heightM;
    }

    /**
     * Discharge, m3/s; 0 at or below the lower edge.
     *
     * @param headM water level above the lower edge, -100 to 100 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double discharge(double headM) {
        Require.inRange("headM", headM, -100, 100, "m", "give the level over the slot's lower edge in metres");
        return scale() * 2 / 3 * (power(headM) - power(headM - heightM));
    }

    /**
     * Head over the lower edge that passes a discharge, m.
     *
     * @param dischargeM3PerS 0 to 1000 m3/s
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public double head(double dischargeM3PerS) {
        Require.inRange("dischargeM3PerS", dischargeM3PerS, 0, 1000, "m3/s", "give the flow through the slot");
        double target = 1.5 * dischargeM3PerS / scale();
        double asWeir = Math.cbrt(target * target);
        return asWeir <= heightM ? asWeir : coveredHead(target);
    }

    /** Newton's method on h^1.5 - (h - a)^1.5, concave and rising above a: from below it does not overshoot. */
    private double coveredHead(double target) {
        double h = heightM;
        for (int step = 0; step < 100; step++) {
            double slope = 1.5 * (Math.sqrt(h) - Math.sqrt(h - heightM));
            double move = (target - power(h) + power(h - heightM)) / slope;
            h += move;
            if (Math.abs(move) <= 1e-12 * h) {
                break;
            }
        }
        return h;
    }

    private double scale() {
        return coefficient * Math.sqrt(2 * GRAVITY) * widthM;
    }

    private static double power(double h) {
        return h <= 0 ? 0 : h * Math.sqrt(h);
    }
}
