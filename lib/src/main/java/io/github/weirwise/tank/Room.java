package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * The air over the tank.
 *
 * @param airCelsius 5 to 45 C
 * @param relativeHumidity 0 to 1
 * @param airSpeedMPerS over the water, 0 to 5 m/s
 * @since 0.1
 */
public record Room(double airCelsius, double relativeHumidity, double airSpeedMPerS) {
    /** A quiet room at 22 C and half saturated. */
    public static final Room QUIET = new Room(22, 0.5, 0);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Room {
        String fix = "give the air of the room";
        Require.inRange("airCelsius", airCelsius, 5, 45, "\u00b0C", fix);
        Require.inRange("relativeHumidity", relativeHumidity, 0, 1, "", fix);
        Require.inRange("airSpeedMPerS", airSpeedMPerS, 0, 5, "m/s", fix);
    }
}
