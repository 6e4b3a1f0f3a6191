package io.github.weirwise.report;

/**
 * The units in which people are told numbers. Inside the library numbers carry their unit in their name; this list
 * exists only so that a sentence can be printed in metric or in US customary units.
 *
 * <p>Conversion factors are exact by definition (NIST SP 811, appendix B) unless the unit has no US customary twin.
 *
 * @since 0.1
 */
public enum Unit {
    /** Short lengths; inches in US units. */
    MILLIMETRE("mm", 1, "in", 1 / 25.4, 2),
    /** Lengths of tanks and pipes; inches in US units. */
    CENTIMETRE("cm", 1, "in", 1 / 2.54, 1),
    /** Volumes of water; US gallons in US units. */
    LITRE("L", 1, "US gal", 1 / 3.785411784, 1),
    /** Volumes of skimmate; fluid ounces in US units. */
    MILLILITRE("mL", 0, "fl oz", 1 / 29.5735295625, 1),
    /** Flows of water and of air; US gallons an hour in US units. */
    LITRE_PER_HOUR("L/h", 0, "US gal/h", 1 / 3.785411784, 1),
    /** Amounts of skimmate; fluid ounces a day in US units. */
    MILLILITRE_PER_DAY("mL/day", 0, "fl oz/day", 1 / 29.5735295625, 1),
    /** Temperatures; degrees Fahrenheit in US units. */
    CELSIUS("\u00b0C", 1, "\u00b0F", 1.8, 1),
    /** Large masses; pounds in US units. */
    KILOGRAM("kg", 1, "lb", 1 / 0.45359237, 1),
    /** Small masses, the same in both systems. */
    GRAM("g", 1, "g", 1, 1),
    /** Concentrations, the same in both systems. */
    MILLIGRAM_PER_LITRE("mg/L", 2, "mg/L", 1, 2),
    /** Practical salinity, which has no unit. */
    SALINITY("", 1, "", 1, 1),
    /** Darkness in platinum-cobalt units, the same in both systems. */
    PLATINUM_COBALT("Pt-Co", 0, "Pt-Co", 1, 0),
    /** Pressures, the same in both systems. */
    PASCAL("Pa", 0, "Pa", 1, 0),
    /** Short times. */
    SECOND("s", 0, "s", 1, 0),
    /** Times up to an hour or so. */
    MINUTE("min", 0, "min", 1, 0),
    /** Times up to a day or so. */
    HOUR("h", 1, "h", 1, 1),
    /** Long times. */
    DAY("days", 1, "days", 1, 1),
    /** A share between 0 and 1, printed as a percentage. */
    SHARE("%", 0, "%", 1, 0),
    /** A plain count or ratio. */
    PLAIN("", 2, "", 1, 2),
    /** A whole number. */
    COUNT("", 0, "", 1, 0);

    private final String metricSymbol;
    private final int metricDecimals;
    private final String usSymbol;
    private final double usPerMetric;
    private final int usDecimals;

    Unit(String metricSymbol, int metricDecimals, String usSymbol, double usPerMetric, int usDecimals) {
        this.metricSymbol = metricSymbol;
        this.metricDecimals = metricDecimals;
        this.usSymbol = usSymbol;
        this.usPerMetric = usPerMetric;
        this.usDecimals = usDecimals;
    }

    /** Symbol in the given system; empty for dimensionless numbers. */
    public String symbol(UnitSystem system) {
        return system == UnitSystem.METRIC ? metricSymbol : usSymbol;
    }

    /** How many decimals a person is shown. */
    public int decimals(UnitSystem system) {
        return system == UnitSystem.METRIC ? metricDecimals : usDecimals;
    }

    /** The number to print for a value held in the metric unit (a {@link #SHARE} of 0.2 prints as 20). */
    public double toShown(double value, UnitSystem system) {
        if (this == SHARE) {
            return 100 * value;
        }
        if (system == UnitSystem.METRIC) {
            return value;
        }
        return this == CELSIUS ? value * usPerMetric + 32 : value * usPerMetric;
    }

    /** The metric value behind a shown number; inverse of {@link #toShown}. */
    public double fromShown(double shown, UnitSystem system) {
        if (this == SHARE) {
            return shown / 100;
        }
        if (system == UnitSystem.METRIC) {
            return shown;
        }
        return this == CELSIUS ? (shown - 32) / usPerMetric : shown / usPerMetric;
    }
}
