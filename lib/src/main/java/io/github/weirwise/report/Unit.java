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
    MILLIMETRE("mm", 1, "in", 1 / 25.4, 2, Rounding.HALVES, Rounding.HUNDREDTHS),
    /** Speeds of foam. */
    MILLIMETRE_PER_MINUTE("mm/min", 0, "in/min", 1 / 25.4, 2, Rounding.SMALL_UNIT, Rounding.HUNDREDTHS),
    /** Lengths of tanks and pipes; inches in US units. */
    CENTIMETRE("cm", 1, "in", 1 / 2.54, 1, Rounding.HALVES, Rounding.TENTHS),
    /** Volumes of water; US gallons in US units. */
    LITRE("L", 1, "US gal", 1 / 3.785411784, 1, Rounding.AMOUNT, Rounding.AMOUNT),
    /** Volumes of skimmate; fluid ounces in US units. */
    MILLILITRE("mL", 0, "fl oz", 1 / 29.5735295625, 1, Rounding.SMALL_UNIT, Rounding.AMOUNT),
    /** Flows of water and of air; US gallons an hour in US units. */
    LITRE_PER_HOUR("L/h", 0, "US gal/h", 1 / 3.785411784, 1, Rounding.AMOUNT, Rounding.AMOUNT),
    /** Amounts of skimmate; fluid ounces a day in US units. */
    MILLILITRE_PER_DAY("mL/day", 0, "fl oz/day", 1 / 29.5735295625, 1, Rounding.SMALL_UNIT, Rounding.AMOUNT),
    /** Temperatures; degrees Fahrenheit in US units. */
    CELSIUS("\u00b0C", 1, "\u00b0F", 1.8, 1, Rounding.TENTHS, Rounding.TENTHS),
    /** Large masses; pounds in US units. */
    KILOGRAM("kg", 1, "lb", 1 / 0.45359237, 1, Rounding.AMOUNT, Rounding.AMOUNT),
    /** Small masses, the same in both systems. */
    GRAM("g", 1, "g", 1, 1, Rounding.AMOUNT, Rounding.AMOUNT),
    /** Concentrations, the same in both systems. */
    MILLIGRAM_PER_LITRE("mg/L", 2, "mg/L", 1, 2, Rounding.TWO_DIGITS, Rounding.TWO_DIGITS),
    /** Practical salinity, which has no unit. */
    SALINITY("", 1, "", 1, 1, Rounding.TENTHS, Rounding.TENTHS),
    /** Darkness in platinum-cobalt units, the same in both systems. */
    PLATINUM_COBALT("Pt-Co", 0, "Pt-Co", 1, 0, Rounding.TWO_DIGITS, Rounding.TWO_DIGITS),
    /** Pressures, the same in both systems. */
    PASCAL("Pa", 0, "Pa", 1, 0, Rounding.TWO_DIGITS, Rounding.TWO_DIGITS),
    /** Short times. */
    SECOND("s", 0, "s", 1, 0, Rounding.WHOLE, Rounding.WHOLE),
    /** Times up to an hour or so. */
    MINUTE("min", 0, "min", 1, 0, Rounding.WHOLE, Rounding.WHOLE),
    /** Times up to a day or so. */
    HOUR("h", 1, "h", 1, 1, Rounding.HALVES, Rounding.HALVES),
    /** Long times. */
    DAY("days", 1, "days", 1, 1, Rounding.HALVES, Rounding.HALVES),
    /** A share between 0 and 1, printed as a percentage. */
    SHARE("%", 0, "%", 1, 0, Rounding.WHOLE, Rounding.WHOLE),
    /** A computed chance between 0 and 1, printed as a percentage: no finer than 5 %, never 0 or 100 %. */
    CHANCE("%", 0, "%", 1, 0, Rounding.FIVES, Rounding.FIVES),
    /** A plain ratio. */
    PLAIN("", 2, "", 1, 2, Rounding.TWO_DIGITS, Rounding.TWO_DIGITS),
    /** A whole number. */
    COUNT("", 0, "", 1, 0, Rounding.WHOLE, Rounding.WHOLE);

    private final String metricSymbol;
    private final int metricDecimals;
    private final String usSymbol;
    private final double usPerMetric;
    private final int usDecimals;
    private final Rounding metricRounding;
    private final Rounding usRounding;

    Unit(
            String metricSymbol,
            int metricDecimals,
            String usSymbol,
            double usPerMetric,
            int usDecimals,
            Rounding metricRounding,
            Rounding usRounding) {
        this.metricSymbol = metricSymbol;
        this.metricDecimals = metricDecimals;
        this.usSymbol = usSymbol;
        this.usPerMetric = usPerMetric;
        this.usDecimals = usDecimals;
        this.metricRounding = metricRounding;
        this.usRounding = usRounding;
    }

    /** Symbol in the given system; empty for dimensionless numbers. */
    public String symbol(UnitSystem system) {
        return system == UnitSystem.METRIC ? metricSymbol : usSymbol;
    }

    Rounding rounding(UnitSystem system) {
        return system == UnitSystem.METRIC ? metricRounding : usRounding;
    }

    /** How many decimals a person may type. */
    public int decimals(UnitSystem system) {
        return system == UnitSystem.METRIC ? metricDecimals : usDecimals;
    }

    private boolean isPercent() {
        return this == SHARE || this == CHANCE;
    }

    /** The number to print for a value held in the metric unit (a {@link #SHARE} of 0.2 prints as 20). */
    public double toShown(double value, UnitSystem system) {
        if (isPercent()) {
            return 100 * value;
        }
        if (system == UnitSystem.METRIC) {
            return value;
        }
        return this == CELSIUS ? value * usPerMetric + 32 : value * usPerMetric;
    }

    /** The metric value behind a shown number; inverse of {@link #toShown}. */
    public double fromShown(double shown, UnitSystem system) {
        if (isPercent()) {
            return shown / 100;
        }
        if (system == UnitSystem.METRIC) {
            return shown;
        }
        return this == CELSIUS ? (shown - 32) / usPerMetric : shown / usPerMetric;
    }
}
