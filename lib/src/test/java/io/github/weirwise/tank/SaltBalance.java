package io.github.weirwise.tank;

import io.github.weirwise.report.Require;

/**
 * Salinity after evaporation, foam removal and mixing, g/kg, from the conservation of salt (mass basis).
 *
 * <p>Evaporation takes no salt; foam liquid takes it in proportion, and what replaces it decides the drift.
 *
 * @since 0.1
 */
public final class SaltBalance {
    private static final String FIX = "give masses in kilograms";

    private SaltBalance() {}

    /**
     * Salinity after water evaporated and was not replaced, S0 m0/(m0 - E).
     *
     * @param salinity before, g/kg, 0 to 100
     * @param waterKg mass of the tank water before, above 0
     * @param evaporatedKg mass evaporated, 0 to below the mass before
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double afterEvaporation(double salinity, double waterKg, double evaporatedKg) {
        requireTank(salinity, waterKg);
        Require.inRange("evaporatedKg", evaporatedKg, 0, 0.99 * waterKg, "kg", FIX);
        return salinity * waterKg / (waterKg - evaporatedKg);
    }

    /**
     * Salinity after foam liquid was taken out steadily and replaced by fresh water, S0 exp(-q t/m).
     *
     * @param salinity before, g/kg, 0 to 100
     * @param waterKg mass of the tank water, above 0
     * @param kgPerDay foam liquid, 0 or more
     * @param days 0 or more
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double afterSkimming(double salinity, double waterKg, double kgPerDay, double days) {
        requireTank(salinity, waterKg);
        Require.inRange("kgPerDay", kgPerDay, 0, 1e6, "kg/day", FIX);
        Require.inRange("days", days, 0, 1e5, "days", "give a time after now");
        return salinity * Math.exp(-kgPerDay * days / waterKg);
    }

    /**
     * Salinity of two waters mixed.
     *
     * @param salinity of the tank, g/kg, 0 to 100
     * @param waterKg mass of the tank water, above 0
     * @param addedSalinity of the water added, g/kg, 0 to 100
     * @param addedKg mass added, 0 or more
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public static double afterMixing(double salinity, double waterKg, double addedSalinity, double addedKg) {
        requireTank(salinity, waterKg);
        Require.inRange("addedSalinity", addedSalinity, 0, 100, "g/kg", FIX);
        Require.inRange("addedKg", addedKg, 0, 1e9, "kg", FIX);
        return (salinity * waterKg + addedSalinity * addedKg) / (waterKg + addedKg);
    }

    private static void requireTank(double salinity, double waterKg) {
        Require.inRange("salinity", salinity, 0, 100, "g/kg", FIX);
        Require.inRange("waterKg", waterKg, 1e-6, 1e9, "kg", FIX);
    }
}
