package io.github.weirwise.setup;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * One point of a pump's curve.
 *
 * @param flowLitresPerHour flow, 0 to 200000 L/h
 * @param headMm head at that flow, 0 to 50000 mm
 */
public record PumpPoint(double flowLitresPerHour, double headMm) {
    private static final Limit FLOW_LITRES_PER_HOUR =
            Limit.of("flowLitresPerHour", 0, 200000, Unit.LITRE_PER_HOUR, "setup.try.readTheCurveIn");
    private static final Limit HEAD_MM = Limit.of("headMm", 0, 50000, Unit.MILLIMETRE, "setup.try.readTheCurveIn2");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public PumpPoint {
        FLOW_LITRES_PER_HOUR.check(flowLitresPerHour);
        HEAD_MM.check(headMm);
    }
}
