package io.github.weirwise.internal.physics.bubbles;

import io.github.weirwise.report.Require;

/**
 * Surface between gas and water: per volume of column (1/m) and per time (m2/s), from its definition, 6/d32.
 *
 * @since 0.1
 */
public final class InterfacialArea {
    private InterfacialArea() {}

    /**
     * Bubble surface in a cubic metre of bubbly water, m2/m3: 6 e/d32.
     *
     * @param holdup e, share of gas, 0 to 1
     * @param sauterDiameterM d32, 1e-6 to 0.1 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double perVolume(double holdup, double sauterDiameterM) {
        Require.inRange("holdup", holdup, 0, 1, "", "give the share of the column that is gas");
        requireDiameter(sauterDiameterM);
        return 6 * holdup / sauterDiameterM;
    }

    /**
     * Bubble surface that enters with a gas flow, m2/s: 6 Q/d32.
     *
     * @param gasFlowM3PerS Q, 0 to 10 m3/s
     * @param sauterDiameterM d32, 1e-6 to 0.1 m
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double perSecond(double gasFlowM3PerS, double sauterDiameterM) {
        Require.inRange("gasFlowM3PerS", gasFlowM3PerS, 0, 10, "m3/s", "100 L/h is 2.8e-5 m3/s");
        requireDiameter(sauterDiameterM);
        return 6 * gasFlowM3PerS / sauterDiameterM;
    }

    private static void requireDiameter(double diameter) {
        Require.inRange("sauterDiameterM", diameter, 1e-6, 0.1, "m", "give the bubbles' diameter in metres");
    }
}
