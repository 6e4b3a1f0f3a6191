package io.github.weirwise.table;

import io.github.weirwise.internal.physics.seawater.SpecificGravity;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A unit that people write above a column, and how its numbers become the metric ones. Factors are exact (NIST SP 811).
 *
 * @param kind what it measures
 * @param toMetric from the written number to mm, mL, mL/day, L/h, Celsius, hours, salinity or platinum-cobalt units
 */
record TableUnit(Kind kind, DoubleUnaryOperator toMetric) {
    /** What a unit measures. */
    enum Kind {
        LENGTH,
        VOLUME,
        VOLUME_PER_DAY,
        FLOW,
        TEMPERATURE,
        TIME,
        SALINITY,
        COLOUR,
        NONE
    }

    private static final int LONGEST = 60;
    private static final double INCH_MM = 25.4;
    private static final double US_GALLON_L = 3.785411784;
    private static final double IMPERIAL_GALLON_L = 4.54609;
    private static final double US_OUNCE_ML = 29.5735295625;
    private static final double CUBIC_FOOT_L = 28.316846592;
    private static final Map<String, TableUnit> KNOWN = known();

    /** The unit that some words name, if they name one; case and blanks do not count. */
    static Optional<TableUnit> of(String words) {
        return words.length() > LONGEST ? Optional.empty() : Optional.ofNullable(KNOWN.get(plain(words)));
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replace("\u00b0", "deg")
                .replace("\u00ba", "deg")
                .replace("liter", "litre")
                .replaceAll("\\s+per\\s+", "/")
                .replaceAll("[\\s.]+", "");
    }

    private static Map<String, TableUnit> known() {
        Map<String, TableUnit> units = new HashMap<>();
        scaled(units, Kind.LENGTH, 1, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        scaled(units, Kind.LENGTH, 10, "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        scaled(units, Kind.LENGTH, INCH_MM, "in", "inch", "inches", "\"");
        scaled(units, Kind.VOLUME, 1, "ml", "millilitre", "millilitres", "cc");
        scaled(units, Kind.VOLUME, 1000, "l", "litre", "litres");
        scaled(units, Kind.VOLUME, US_OUNCE_ML, "floz", "usfloz", "oz");
        scaled(units, Kind.VOLUME, 1000 * US_GALLON_L, "gal", "gallon", "gallons", "usgal");
        scaled(units, Kind.VOLUME, 1000 * IMPERIAL_GALLON_L, "impgal", "imperialgallons");
        scaled(units, Kind.VOLUME_PER_DAY, 1, "ml/day", "ml/d");
        scaled(units, Kind.VOLUME_PER_DAY, 1000, "l/day", "l/d", "litres/day");
        scaled(units, Kind.VOLUME_PER_DAY, US_OUNCE_ML, "floz/day", "oz/day");
        scaled(units, Kind.VOLUME_PER_DAY, 1000 * US_GALLON_L, "gal/day", "gallons/day", "gpd");
        scaled(units, Kind.FLOW, 1, "l/h", "lph", "l/hr", "litres/hour", "litres/h");
        scaled(units, Kind.FLOW, 60, "l/min", "lpm", "litres/minute");
        scaled(units, Kind.FLOW, 1000, "m3/h", "m\u00b3/h");
        scaled(units, Kind.FLOW, US_GALLON_L, "gal/h", "gph", "gallons/hour", "usgal/h");
        scaled(units, Kind.FLOW, 60 * US_GALLON_L, "gal/min", "gpm");
        scaled(units, Kind.FLOW, CUBIC_FOOT_L, "ft3/h", "cfh", "scfh");
        scaled(units, Kind.TEMPERATURE, 1, "c", "degc", "celsius");
        add(units, Kind.TEMPERATURE, fahrenheit -> (fahrenheit - 32) / 1.8, "f", "degf", "fahrenheit");
        add(units, Kind.TEMPERATURE, kelvin -> kelvin - 273.15, "k", "kelvin");
        scaled(units, Kind.TIME, 1, "h", "hr", "hrs", "hour", "hours");
        scaled(units, Kind.TIME, 24, "d", "day", "days");
        scaled(units, Kind.TIME, 1.0 / 60, "min", "minute", "minutes");
        scaled(units, Kind.TIME, 1.0 / 3600, "s", "sec", "second", "seconds");
        scaled(units, Kind.SALINITY, 1, "psu", "ppt", "g/kg", "\u2030", "practicalsalinity");
        add(units, Kind.SALINITY, SpecificGravity.AT_25_25::salinity, "sg25/25");
        add(units, Kind.SALINITY, SpecificGravity.AT_20_20::salinity, "sg20/20");
        add(units, Kind.SALINITY, SpecificGravity.AT_25_4::salinity, "sg25/4");
        add(units, Kind.SALINITY, SpecificGravity.AT_60F_60F::salinity, "sg60f/60f");
        scaled(units, Kind.COLOUR, 1, "pt-co", "ptco", "hazen", "apha");
        return Map.copyOf(units);
    }

    private static void scaled(Map<String, TableUnit> units, Kind kind, double factor, String... names) {
        add(units, kind, value -> value * factor, names);
    }

    private static void add(Map<String, TableUnit> units, Kind kind, DoubleUnaryOperator toMetric, String... names) {
        for (String name : names) {
            units.put(plain(name), new TableUnit(kind, toMetric));
        }
    }
}
