package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * Water lost to the room from an open surface, kg per square metre and day: the ASHRAE (Carrier) form; 1 to 60 C, at
 * sea level.
 *
 * <p>The ASHRAE form is known to overstate quiet water: Smith, L&ouml;f &amp; Jones measured 74 % of it on an undisturbed
 * pool, and ASHRAE's own activity factor for quiet (residential) water is 0.5. A small rimmed tank may differ by half
 * from either, and the exhaust of a trickle tower adds to it; a keeper's own litres a day are better than any formula.
 */
public final class Evaporation {
    /** Lowering of vapour pressure by salt, share per unit of practical salinity (from memory; 1.9 % at 35). */
    public static final double SALT_LOWERING = 0.000537;

    /** Constant of still air in the ASHRAE form, W/(m2 Pa). */
    public static final double AT_REST = 0.089;

    private static final double SECONDS_PER_DAY = 86400;
    private static final double KELVIN = 273.15;
    private static final String WEATHER = "give the water and the air of an indoor tank";

    private Evaporation() {}

    /**
     * ASHRAE Handbook, HVAC Applications (Carrier 1918), SI form (pw - pa)(0.089 + 0.0782 V)/Y times the factor; formula
     * from memory, its US form read (0.5 % apart).
     *
     * @param waterCelsius water surface, 1 to 60 C
     * @param practicalSalinity 0 for fresh water, to 42
     * @param airCelsius room, 1 to 60 C
     * @param relativeHumidity of the room, 0 to 1
     * @param airSpeedMPerS over the surface, 0 to 5 m/s
     * @param activityFactor 1 for the plain formula, 0.5 to 0.74 for quiet water
     * @return kg/(m2 day), zero when the air is moister than the surface
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double ashraeKgPerM2Day(
            double waterCelsius,
            double practicalSalinity,
            double airCelsius,
            double relativeHumidity,
            double airSpeedMPerS,
            double activityFactor) {
        Require.inRange("practicalSalinity", practicalSalinity, 0, 42, "", WEATHER);
        Require.inRange("relativeHumidity", relativeHumidity, 0, 1, "", WEATHER);
        Require.inRange("airSpeedMPerS", airSpeedMPerS, 0, 5, "m/s", WEATHER);
        Require.inRange("activityFactor", activityFactor, 0, 3, "", WEATHER);
        double surface = (1 - SALT_LOWERING * practicalSalinity) * vapourPressurePa(waterCelsius);
        double room = relativeHumidity * vapourPressurePa(airCelsius);
        double perSecond =
                (surface - room) / 1000 * (AT_REST + 0.0782 * airSpeedMPerS) / latentHeatKjPerKg(waterCelsius);
        return Math.max(0, activityFactor * perSecond * SECONDS_PER_DAY);
    }

    /**
     * Saturation pressure of water vapour over pure water, Pa: IAPWS-IF97 equation 30.
     *
     * @param celsius 1 to 350 C
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double vapourPressurePa(double celsius) {
        Require.inRange("celsius", celsius, 1, 350, "\u00b0C", WEATHER);
        double t = celsius + KELVIN;
        double theta = t - 0.23855557567849 / (t - 650.17534844798);
        double a = (theta + 1167.0521452767) * theta - 724213.16703206;
        double b = (-17.073846940092 * theta + 12020.824702470) * theta - 3232555.0322333;
        double c = (14.915108613530 * theta - 4823.2657361591) * theta + 405113.40542057;
        double x = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return 1e6 * x * x * x * x;
    }

    /** Latent heat of evaporation, kJ/kg: a cubic in the temperature (from memory), within 0.1 % of steam tables to 40 C. */
    static double latentHeatKjPerKg(double celsius) {
        return 2500.8 + celsius * (-2.36 + celsius * (0.0016 - celsius * 0.00006));
    }
}
