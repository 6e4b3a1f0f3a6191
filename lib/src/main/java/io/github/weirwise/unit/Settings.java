package io.github.weirwise.unit;

import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Unit;
import java.util.Objects;

/**
 * How a unit is set and in which water it runs.
 *
 * @param weirCrestMm height of the weir crest over the chamber floor as its mark says, 1 to 2000 mm
 * @param flowLitresPerHour water through the unit, 0 to 100000 L/h
 * @param airLitresPerHour air that the injectors draw together when all is clean, 0 to 20000 L/h
 * @param waterCelsius water temperature, 5 to 40 C
 * @param practicalSalinity practical salinity, 0 to 42
 * @param condition load of the water and state of the parts
 * @since 0.1
 */
public record Settings(
        double weirCrestMm,
        double flowLitresPerHour,
        double airLitresPerHour,
        double waterCelsius,
        double practicalSalinity,
        Condition condition) {
    private static final Limit WEIR_CREST_MM =
            Limit.of("weirCrestMm", 1, 2000, Unit.MILLIMETRE, "unit.try.measureTheCrestFrom");
    private static final Limit FLOW_LITRES_PER_HOUR =
            Limit.of("flowLitresPerHour", 0, 100000, Unit.LITRE_PER_HOUR, "unit.try.measureTheReturnFlow");
    private static final Limit AIR_LITRES_PER_HOUR =
            Limit.of("airLitresPerHour", 0, 20000, Unit.LITRE_PER_HOUR, "unit.try.giveTheCleanAir");
    private static final Limit WATER_CELSIUS =
            Limit.of("waterCelsius", 5, 40, Unit.CELSIUS, "unit.try.giveTheWaterTemperature");
    private static final Limit PRACTICAL_SALINITY =
            Limit.of("practicalSalinity", 0, 42, Unit.SALINITY, "unit.try.givePracticalSalinityNot");

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Settings {
        WEIR_CREST_MM.check(weirCrestMm);
        FLOW_LITRES_PER_HOUR.check(flowLitresPerHour);
        AIR_LITRES_PER_HOUR.check(airLitresPerHour);
        WATER_CELSIUS.check(waterCelsius);
        PRACTICAL_SALINITY.check(practicalSalinity);
        Objects.requireNonNull(condition, "condition");
    }

    /**
     * The same settings with another weir crest.
     *
     * @param value 1 to 2000 mm over the chamber floor
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings withWeirCrestMm(double value) {
        return new Settings(value, flowLitresPerHour, airLitresPerHour, waterCelsius, practicalSalinity, condition);
    }

    /**
     * The same settings with another flow.
     *
     * @param value 0 to 100000 L/h
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings withFlowLitresPerHour(double value) {
        return new Settings(weirCrestMm, value, airLitresPerHour, waterCelsius, practicalSalinity, condition);
    }

    /**
     * The same settings with another clean air draw.
     *
     * @param value 0 to 20000 L/h
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings withAirLitresPerHour(double value) {
        return new Settings(weirCrestMm, flowLitresPerHour, value, waterCelsius, practicalSalinity, condition);
    }

    /**
     * The same settings with another temperature.
     *
     * @param value 5 to 40 degrees Celsius
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings withWaterCelsius(double value) {
        return new Settings(weirCrestMm, flowLitresPerHour, airLitresPerHour, value, practicalSalinity, condition);
    }

    /**
     * The same settings with another salinity.
     *
     * @param value PSS-78, 0 to 42
     * @throws io.github.weirwise.report.OutOfRangeException outside those limits
     */
    public Settings withPracticalSalinity(double value) {
        return new Settings(weirCrestMm, flowLitresPerHour, airLitresPerHour, waterCelsius, value, condition);
    }

    /** The same settings with another condition. */
    public Settings withCondition(Condition value) {
        return new Settings(weirCrestMm, flowLitresPerHour, airLitresPerHour, waterCelsius, practicalSalinity, value);
    }
}
