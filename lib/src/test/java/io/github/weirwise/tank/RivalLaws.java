package io.github.weirwise.tank;

/** Published laws and numbers that the tank does not use, to hold those against that it does. Arguments are not checked. */
public final class RivalLaws {
    private static final double KELVIN = 273.15;
    private static final double NITROGEN = 14.0067;
    private static final double OXYGEN_MOLECULE = 31.9988;
    private static final double CALCIUM_CARBONATE = 100.0869;
    private static final double ATMOSPHERE_PA = 101325;
    private static final double DRY_AIR_J_PER_KG_K = 287.055;

    private RivalLaws() {}

    /**
     * Shah 2014, ASHRAE Transactions 120(2), undisturbed fresh water: natural convection by the difference in density of
     * the dry air, or a floor of forced convection, whichever is more. Constants from memory.
     *
     * @param waterCelsius water surface, 1 to 60 C
     * @param airCelsius room, 1 to 60 C
     * @param relativeHumidity of the room, 0 to 1
     * @return kg/(m2 day), zero when the air is moister than the surface
     */
    public static double shahKgPerM2Day(double waterCelsius, double airCelsius, double relativeHumidity) {
        double surfacePa = Evaporation.vapourPressurePa(waterCelsius);
        double roomPa = relativeHumidity * Evaporation.vapourPressurePa(airCelsius);
        double surfaceAir = dryAirKgPerM3(waterCelsius, surfacePa);
        double lift = dryAirKgPerM3(airCelsius, roomPa) - surfaceAir;
        double c = lift > 0.02 ? 35 : 40;
        double free =
                c * surfaceAir * Math.cbrt(Math.max(0, lift)) * (humidityRatio(surfacePa) - humidityRatio(roomPa));
        double forced = 5e-5 * (surfacePa - roomPa);
        return Math.max(0, 24 * Math.max(free, forced));
    }

    private static double dryAirKgPerM3(double celsius, double vapourPa) {
        return (ATMOSPHERE_PA - vapourPa) / (DRY_AIR_J_PER_KG_K * (celsius + KELVIN));
    }

    private static double humidityRatio(double vapourPa) {
        return 0.62198 * vapourPa / (ATMOSPHERE_PA - vapourPa);
    }

    /**
     * Fresh-water share of un-ionised ammonia, for comparison only: Emerson et al. 1975, J. Fish. Res. Board Can. 32:2379,
     * pKa = 0.09018 + 2729.92/T (from memory). The paper's own table is met with T = t + 273.2.
     *
     * @param pH pH, 4 to 11
     * @param celsius 0 to 40 C
     */
    public static double unionisedFractionInFreshWater(double pH, double celsius) {
        return 1 / (1 + Math.pow(10, 0.09018 + 2729.92 / (celsius + KELVIN) - pH));
    }

    /**
     * Total ammonia nitrogen from feed that is eaten.
     *
     * @param feedGrams dry feed, 0 to 1e6 g
     * @param proteinShare 0 to 1
     * @return g N
     */
    public static double ammoniaNitrogenG(double feedGrams, double proteinShare) {
        return FeedWaste.AMMONIA_SHARE * FeedWaste.nitrogenG(feedGrams, proteinShare);
    }

    /** g CaCO3 of alkalinity used for each g of ammonium nitrogen, without growth: 2 eq per mol N. */
    public static final double ALKALINITY_PER_NITROGEN = CALCIUM_CARBONATE / NITROGEN;

    /** As above with growth, 1.83 mol O2: Ebeling, Timmons &amp; Bisogni 2006, Aquaculture 257:346 (prints 4.18). */
    public static final double OXYGEN_PER_NITROGEN_WITH_GROWTH = 1.83 * OXYGEN_MOLECULE / NITROGEN;

    /** As above with growth, 1.97 mol HCO3-: Ebeling, Timmons &amp; Bisogni 2006 (prints 7.05). */
    public static final double ALKALINITY_PER_NITROGEN_WITH_GROWTH = 1.97 / 2 * CALCIUM_CARBONATE / NITROGEN;

    /** g of nitrate ion for each g of nitrogen, 62.0049/14.0067. */
    public static final double NITRATE_PER_NITROGEN = 62.0049 / NITROGEN;
}
