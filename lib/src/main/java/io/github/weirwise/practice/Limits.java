package io.github.weirwise.practice;

import io.github.weirwise.report.Require;

/**
 * What must not happen, whatever else is reached.
 *
 * @param floodHours hours with water running into the cup, 0 to 1500 h
 * @param spilledLitres water and skimmate on the floor, 0 to 1e5 L
 * @param stressHours hours with water that harms animals (ammonia, oxygen, salinity, nitrite), 0 to 1500 h
 * @since 0.1
 */
public record Limits(double floodHours, double spilledLitres, double stressHours) {
    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     */
    public Limits {
        Require.inRange("floodHours", floodHours, 0, 1500, "h", "a few hours");
        Require.inRange("spilledLitres", spilledLitres, 0, 1e5, "L", "a litre or less");
        Require.inRange("stressHours", stressHours, 0, 1500, "h", "0 unless the scenario begins with stress");
    }
}
