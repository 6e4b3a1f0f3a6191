package io.github.weirwise.practice;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * What must not happen, whatever else is reached.
 *
 * @param floodHours hours with water running into the cup, 0 to 1500 h
 * @param spilledLitres water and skimmate on the floor, 0 to 1e5 L
 * @param stressHours hours with water that harms animals (ammonia, oxygen, salinity, nitrite), 0 to 1500 h
 */
public record Limits(double floodHours, double spilledLitres, double stressHours) {
    private static final Limit FLOOD_HOURS = Limit.of("floodHours", 0, 1500, Unit.HOUR, "practice.try.aFewHours");
    private static final Limit SPILLED_LITRES =
            Limit.of("spilledLitres", 0, 1e5, Unit.LITRE, "practice.try.aLitreOrLess");
    private static final Limit STRESS_HOURS =
            Limit.of("stressHours", 0, 1500, Unit.HOUR, "practice.try.0UnlessTheScenario");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Limits {
        FLOOD_HOURS.check(floodHours);
        SPILLED_LITRES.check(spilledLitres);
        STRESS_HOURS.check(stressHours);
    }
}
