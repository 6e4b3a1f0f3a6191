package io.github.weirwise.tank;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;

/**
 * The air over the tank.
 *
 * @param airCelsius 5 to 45 C
 * @param relativeHumidity 0 to 1
 * @param airSpeedMPerS over the water, 0 to 5 m/s
 */
public record Room(double airCelsius, double relativeHumidity, double airSpeedMPerS) {
    private static final Limit AIR_CELSIUS = Limit.of("airCelsius", 5, 45, Unit.CELSIUS, "tank.try.giveTheAirOf");
    private static final Limit RELATIVE_HUMIDITY =
            Limit.of("relativeHumidity", 0, 1, Unit.PLAIN, "tank.try.giveTheAirOf");
    private static final Limit AIR_SPEED_MPER_S = Limit.of("airSpeedMPerS", 0, 5, Unit.PLAIN, "tank.try.giveTheAirOf");

    /** A quiet room at 22 C and half saturated. */
    public static final Room QUIET = new Room(22, 0.5, 0);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Room {
        AIR_CELSIUS.check(airCelsius);
        RELATIVE_HUMIDITY.check(relativeHumidity);
        AIR_SPEED_MPER_S.check(airSpeedMPerS);
    }
}
