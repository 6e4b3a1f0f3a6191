package io.github.weirwise.setup;

import io.github.weirwise.report.Require;

/**
 * One point of a pump's curve.
 *
 * @param flowLitresPerHour flow, 0 to 200000 L/h
 * @param headMm head at that flow, 0 to 50000 mm
 * @since 0.1
 */
public record PumpPoint(double flowLitresPerHour, double headMm) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public PumpPoint {
        Require.inRange("flowLitresPerHour", flowLitresPerHour, 0, 200000, "L/h", "read the curve in litres per hour");
        Require.inRange("headMm", headMm, 0, 50000, "mm", "read the curve in millimetres; a metre is 1000");
    }
}
